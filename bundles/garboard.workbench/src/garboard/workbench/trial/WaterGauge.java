// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.trial;

import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleControlAdapter;
import org.eclipse.swt.accessibility.AccessibleControlEvent;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;

import garboard.checks.Standing;
import garboard.quantity.UnitSystem;
import garboard.quantity.Volume;
import garboard.report.Figures;
import garboard.session.Listeners.Subscription;
import garboard.session.trial.CrankingWater;
import garboard.session.trial.MufflerRoom;
import garboard.workbench.Desk;
import garboard.workbench.look.Palette;
import garboard.workbench.text.Texts;

/**
 * The muffler lying on its side: what stands in it before anybody cranks, what the starter can have pumped into it, the mark at which the
 * seacock is to be shut, and the inlet, beyond which is the engine. Where the muffler is not known, the same with seconds.
 */
final class WaterGauge extends Canvas {

    private final Desk desk;
    private final Texts.Of texts;
    private Optional<CrankingWater> water = Optional.empty();
    private UnitSystem units;

    WaterGauge(Composite parent, Desk desk) {
        super(parent, SWT.NO_FOCUS | SWT.DOUBLE_BUFFERED);
        this.desk = desk;
        this.texts = desk.texts(WaterGauge.class);
        setData("garboard.id", "trial.gauge");
        Subscription palette = desk.onPalette(now -> redraw());
        addListener(SWT.Paint, event -> paint(event.gc));
        addDisposeListener(event -> palette.close());
        getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                event.result = said();
            }
        });
        getAccessible().addAccessibleControlListener(new AccessibleControlAdapter() {
            @Override
            public void getRole(AccessibleControlEvent event) {
                event.detail = ACC.ROLE_PROGRESSBAR;
            }

            @Override
            public void getValue(AccessibleControlEvent event) {
                event.result = water.map(now -> Math.round(100 * filled(now)) + " %").orElse("");
            }
        });
    }

    void show(CrankingWater now) {
        if (!water.equals(Optional.of(now)) || units != desk.settings().units()) {
            water = Optional.of(now);
            units = desk.settings().units();
            redraw();
        }
    }

    /** {@return what it shows, in words} */
    String said() {
        return water.map(now -> known(now)
            ? texts.get("gauge.said", volume(now.room().standing()), volume(now.collected()), volume(now.room().usable()))
            : texts.get("gauge.said.seconds", seconds(now.cranked().si()), seconds(now.allowed().si()))).orElse("");
    }

    private static boolean known(CrankingWater now) {
        MufflerRoom room = now.room();
        return room.flow().isPresent() && room.usable().isPresent() && room.standing().isPresent();
    }

    private String volume(Optional<Volume> volume) {
        return volume.map(found -> Figures.in(desk.settings().units()).text(found)).orElse("");
    }

    private static String seconds(double time) {
        return String.valueOf(Math.round(time * 10) / 10.0).replaceFirst("\\.0$", "");
    }

    private static double standing(CrankingWater now) {
        return known(now) ? now.room().standing().orElseThrow().si() / now.room().usable().orElseThrow().si() : 0;
    }

    /** Filled part of the bar; beyond its end it is cut off, and the words say so. */
    private static double filled(CrankingWater now) {
        double part = known(now) ? now.filling().orElseThrow().si() : now.cranked().si() / (now.allowed().si() * 2);
        return Math.max(0, Math.min(1, part));
    }

    private static double mark(CrankingWater now) {
        double part = known(now) ? standing(now) + now.room().flow().orElseThrow().si() * now.allowed().si() / now.room().usable().orElseThrow().si()
            : 0.5;
        return Math.max(0, Math.min(1, part));
    }

    @Override
    public Point computeSize(int widthHint, int heightHint, boolean changed) {
        var gc = new GC(this);
        int line = gc.getFontMetrics().getHeight();
        gc.dispose();
        return new Point(widthHint == SWT.DEFAULT ? 30 * line : widthHint, line * 5);
    }

    private void paint(GC gc) {
        water.ifPresent(now -> paint(gc, now));
    }

    private void paint(GC gc, CrankingWater now) {
        Palette palette = desk.palette();
        int line = gc.getFontMetrics().getHeight();
        var bar = new Rectangle(line / 4, line * 3 / 2, getClientArea().width - line / 2, line * 7 / 4);
        gc.setAntialias(SWT.ON);
        gc.setBackground(palette.sheet());
        gc.fillRectangle(bar);
        int standing = (int) (bar.width * standing(now));
        int filled = (int) (bar.width * filled(now));
        gc.setBackground(palette.line());
        gc.fillRectangle(bar.x, bar.y, standing, bar.height);
        boolean loud = now.level() == CrankingWater.Level.SHUT || now.level() == CrankingWater.Level.FULL;
        gc.setBackground(loud ? palette.of(Standing.FALLS_SHORT) : palette.water());
        gc.fillRectangle(bar.x + standing, bar.y, Math.max(0, filled - standing), bar.height);
        hatch(gc, palette, new Rectangle(bar.x + standing, bar.y, Math.max(0, filled - standing), bar.height), line);
        gc.setForeground(palette.ink());
        gc.setLineWidth(Math.max(1, line / 12));
        gc.drawRectangle(bar);
        int mark = bar.x + (int) (bar.width * mark(now));
        gc.setForeground(palette.of(Standing.FALLS_SHORT));
        gc.setLineWidth(Math.max(2, line / 8));
        gc.drawLine(mark, bar.y - line / 3, mark, bar.y + bar.height + line / 3);
        words(gc, now, bar, mark, line);
    }

    /** What was cranked in is hatched, so that it is told from what stands there without its colour. */
    private static void hatch(GC gc, Palette palette, Rectangle part, int line) {
        gc.setForeground(palette.ground());
        gc.setLineWidth(1);
        int right = part.x + part.width;
        for (int x = part.x - part.height; x < right; x += Math.max(4, line / 2)) {
            int from = Math.max(x, part.x);
            int to = Math.min(x + part.height, right);
            if (to > from) {
                gc.drawLine(from, part.y + part.height - (from - x), to, part.y + part.height - (to - x));
            }
        }
    }

    private void words(GC gc, CrankingWater now, Rectangle bar, int mark, int line) {
        Palette palette = desk.palette();
        String shut = texts.get("gauge.shut", seconds(Math.floor(now.allowed().si())));
        String end = known(now) ? texts.get("gauge.inlet", volume(now.room().usable())) : "";
        gc.setForeground(palette.of(Standing.FALLS_SHORT));
        int width = gc.textExtent(shut).x;
        gc.drawText(shut, Math.max(bar.x, Math.min(mark - width / 2, bar.x + bar.width - width)), 0, true);
        gc.setForeground(palette.faint());
        int y = bar.y + bar.height + line / 3;
        String below = known(now) ? texts.get("gauge.standing", volume(now.room().standing())) + "   " + texts.get("gauge.cranked", volume(now.collected()))
            : texts.get("gauge.seconds", seconds(now.cranked().si()));
        gc.drawText(below, bar.x, y, true);
        int endWidth = gc.textExtent(end).x;
        if (gc.textExtent(below).x + endWidth + line < bar.width) {
            gc.drawText(end, bar.x + bar.width - endWidth, y, true);
        }
    }

    @Override
    protected void checkSubclass() {
        // It only measures itself otherwise.
    }
}
