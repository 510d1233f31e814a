// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.trial;

import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;

import garboard.model.Answer;
import garboard.model.FuelPriming;
import garboard.model.Trial;
import garboard.quantity.GaugePressure;
import garboard.session.OpenRecord;
import garboard.session.trial.PrimingPressure;
import garboard.session.trial.PrimingPressure.Standing;
import garboard.workbench.Desk;
import garboard.workbench.fields.FieldRows;
import garboard.workbench.text.Texts;

/** Fuel priming: what was read, and how feed and rail stand against what the maker wants. */
final class PrimingView implements View {

    private final OpenRecord record;
    private final Texts.Of texts;
    private final Composite area;
    private final FieldRows rows;
    private final Said feed;
    private final Said rail;
    private final Said leaks;

    PrimingView(Composite parent, OpenRecord record, Desk desk) {
        this.record = record;
        this.texts = desk.texts(PrimingView.class);
        area = new Composite(parent, SWT.NONE);
        area.setLayout(new Stacked(0, 4));
        rows = new FieldRows(area, record, desk);
        Groups.find(desk, "priming").ifPresent(group -> rows.group(group, record.record()));
        feed = new Said(area, desk, Tone.QUIET);
        rail = new Said(area, desk, Tone.QUIET);
        leaks = new Said(area, desk, Tone.DANGER);
        show();
    }

    @Override
    public void show() {
        say(feed, "feed", PrimingPressure.feed(record.record()));
        say(rail, "rail", PrimingPressure.rail(record.record()));
        boolean leaking = Optional.ofNullable(record.record().getTrial()).map(Trial::getPriming).map(FuelPriming::getLeaks)
            .filter(Answer.YES::equals).isPresent();
        leaks.say(leaking ? texts.get("priming.leaks") : "");
    }

    private void say(Said where, String which, PrimingPressure pressure) {
        String wanted = pressure.low().map(GaugePressure::toString).orElse("\u2026") + " \u2013 "
            + pressure.high().map(GaugePressure::toString).orElse("\u2026");
        boolean limits = pressure.low().isPresent() || pressure.high().isPresent();
        String name = texts.get("priming." + which);
        where.say(switch (pressure.standing()) {
            case NOT_READ -> limits ? texts.get("priming.wanted", name, wanted) : "";
            case NO_LIMIT -> texts.get("priming.noLimit", name, pressure.found().orElseThrow());
            case WITHIN -> texts.get("priming.within", name, pressure.found().orElseThrow(), wanted);
            case BELOW -> texts.get("priming.below", name, pressure.found().orElseThrow(), wanted);
            case ABOVE -> texts.get("priming.above", name, pressure.found().orElseThrow(), wanted);
        }, pressure.standing() == Standing.WITHIN ? Tone.GOOD
            : pressure.standing() == Standing.BELOW || pressure.standing() == Standing.ABOVE ? Tone.DANGER : Tone.QUIET);
    }

    @Override
    public boolean reveal(String key) {
        return rows.reveal(key);
    }
}
