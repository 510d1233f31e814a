// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.fields;

import java.util.List;
import java.util.Optional;

import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;

import garboard.checks.Standing;
import garboard.checks.Verdict;
import garboard.workbench.look.Mark;

/**
 * The worst standing that a field has part in, as a small mark beside its name: each standing has a shape of its own. Drawn on the sheet,
 * since there are hundreds.
 */
public final class StandingMark {

    private static final int TITLES = 6;

    private final FieldContext context;
    private Rectangle place = new Rectangle(0, 0, 0, 0);
    private Optional<Standing> standing = Optional.empty();
    private List<Verdict> told = List.of();

    StandingMark(FieldContext context) {
        this.context = context;
    }

    void setBounds(int x, int y, int width, int height) {
        place = new Rectangle(x, y, width, height);
    }

    Rectangle bounds() {
        return place;
    }

    Optional<Standing> standing() {
        return standing;
    }

    /** Shows the worst of some verdicts. @return whether it looks different now */
    boolean show(List<Verdict> verdicts) {
        told = verdicts.stream().filter(verdict -> verdict.standing() != Standing.DOES_NOT_APPLY).toList();
        Optional<Standing> before = standing;
        standing = told.stream().findFirst().map(Verdict::standing);
        return !standing.equals(before);
    }

    /** {@return the verdicts behind the mark, worst first} */
    String tip() {
        return String.join("\n", told.stream().limit(TITLES).map(verdict -> context.texts().get("mark.verdict",
            context.texts().get("standing." + verdict.standing().name()), verdict.check().title())).toList());
    }

    void paint(GC gc) {
        standing.ifPresent(shown -> {
            int size = Math.min(place.width, place.height) * 7 / 8 / 2 * 2;
            Mark.draw(gc, context.desk().palette(), shown, place.x + (place.width - size) / 2, place.y + (place.height - size) / 2, size);
        });
    }

    /** As {@link Mark#draw(GC, org.eclipse.swt.graphics.Color, org.eclipse.swt.graphics.Color, Standing, int, int, int)} on a sheet. */
    public static void draw(GC gc, Color colour, Standing shown, int x, int y, int size) {
        Mark.draw(gc, colour, gc.getBackground(), shown, x, y, size);
    }
}
