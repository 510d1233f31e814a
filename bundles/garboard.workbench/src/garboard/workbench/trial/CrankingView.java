// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.trial;

import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.EReference;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;

import garboard.model.Answer;
import garboard.model.CrankingAttempt;
import garboard.model.GarboardFactory;
import garboard.model.GarboardPackage.Literals;
import garboard.model.SeacockState;
import garboard.model.Trial;
import garboard.quantity.TimeSpan;
import garboard.session.OpenRecord;
import garboard.session.trial.AttemptWatch;
import garboard.session.trial.CrankingLimits;
import garboard.session.trial.CrankingWater;
import garboard.session.trial.CrankingWater.Level;
import garboard.workbench.Desk;
import garboard.workbench.fields.ItemsEditor;
import garboard.workbench.fields.ItemsEditor.Column;
import garboard.workbench.look.Lettering;
import garboard.workbench.text.Texts;

/** Cranking: how much longer, the stop-watch, the tries. The counter runs on while the starter turns. */
final class CrankingView implements View {

    private static final int TICK_MILLIS = 100;
    private static final List<EReference> ATTEMPTS = List.of(Literals.COMMISSIONING_RECORD__TRIAL, Literals.TRIAL__ATTEMPTS);

    private final OpenRecord record;
    private final Desk desk;
    private final Texts.Of texts;
    private final AttemptWatch watch;
    private final Composite area;
    private final AlarmBand alarm;
    private final WaterGauge gauge;
    private final Said after;
    private final Said limits;
    private final Leading missing;
    private final WatchBar bar;
    private final ItemsEditor attempts;

    CrankingView(Composite parent, OpenRecord record, Desk desk) {
        this.record = record;
        this.desk = desk;
        this.texts = desk.texts(CrankingView.class);
        this.watch = new AttemptWatch(record, desk.clock());
        area = new Composite(parent, SWT.NONE);
        area.setLayout(new Stacked(0, Lettering.height(parent, 0.3)));
        area.setData("garboard.id", "trial.cranking");
        alarm = new AlarmBand(area, desk);
        gauge = new WaterGauge(area, desk);
        bar = new WatchBar(area, desk, record, watch, this::begun);
        after = new Said(area, desk, Tone.DANGER);
        limits = new Said(area, desk, Tone.QUIET);
        missing = Leading.toPlaces(area, desk);
        attempts = new ItemsEditor(area, record, desk, record.record(), ATTEMPTS, List.of(Column.of(Literals.CRANKING_ATTEMPT__AT),
            Column.of(Literals.CRANKING_ATTEMPT__DURATION), Column.of(Literals.CRANKING_ATTEMPT__REST), Column.of(Literals.CRANKING_ATTEMPT__SEACOCK),
            Column.of(Literals.CRANKING_ATTEMPT__FIRED), Column.of(Literals.CRANKING_ATTEMPT__LOWEST_VOLTAGE),
            Column.of(Literals.CRANKING_ATTEMPT__MUFFLER_DRAINED))).withoutDetail().making(this::typed);
        show();
    }

    /** A try that is typed in begins with the seacock as it was last. */
    private CrankingAttempt typed() {
        CrankingAttempt made = GarboardFactory.eINSTANCE.createCrankingAttempt();
        last().map(CrankingAttempt::getSeacock).ifPresent(made::setSeacock);
        return made;
    }

    private Optional<CrankingAttempt> last() {
        return Optional.ofNullable(record.record().getTrial()).map(Trial::getAttempts).filter(all -> !all.isEmpty()).map(List::getLast);
    }

    private void begun() {
        show();
        area.getDisplay().timerExec(TICK_MILLIS, this::tick);
    }

    private void tick() {
        if (!area.isDisposed() && watch.running().isPresent()) {
            show();
            area.getDisplay().timerExec(TICK_MILLIS, this::tick);
        }
    }

    @Override
    public void show() {
        Optional<AttemptWatch.Running> running = watch.running();
        CrankingWater water = CrankingWater.of(record.record(), running);
        gauge.show(water);
        bar.show(running, last());
        Optional<String> tooLong = tooLong(water, running);
        boolean fired = last().filter(attempt -> attempt.getFired() == Answer.YES).isPresent() && water.level() == Level.CALM;
        alarm.show(tooLong.orElseGet(() -> texts.get("crank." + (fired ? "fired.already" : water.level().name()), whole(water.left()))),
            tooLong.isPresent() ? Tone.DANGER : tone(water.level()));
        after.say(after());
        limits.say(limits(water));
        missing.say(missing(water));
    }

    private Optional<String> tooLong(CrankingWater water, Optional<AttemptWatch.Running> running) {
        return running.filter(now -> !now.sofar().isLessThan(water.limits().attempt()) && water.level().compareTo(Level.SHUT) < 0)
            .map(now -> texts.get("crank.tooLong", text(water.limits().attempt())));
    }

    private static Tone tone(Level level) {
        return switch (level) {
            case CALM -> Tone.GOOD;
            case NEAR -> Tone.WARNING;
            case SHUT, FULL -> Tone.DANGER;
        };
    }

    /** The moment after firing is when the seacock is forgotten. */
    private String after() {
        return last().filter(attempt -> attempt.getFired() == Answer.YES && attempt.getSeacock() == SeacockState.SHUT && !waterSeen())
            .map(attempt -> texts.get("crank.openSeacock")).orElse("");
    }

    private boolean waterSeen() {
        return Optional.ofNullable(record.record().getTrial()).map(Trial::getWaterAtOutletAfter).isPresent();
    }

    private String limits(CrankingWater water) {
        String attempt = texts.get(water.limits().attemptByMaker() ? "crank.attempt.maker" : "crank.attempt.usual", text(water.limits().attempt()),
            text(CrankingLimits.USUAL_REST));
        String total = texts.get(water.limits().totalByMaker() ? "crank.total.maker" : "crank.total.usual", text(water.limits().total()));
        String muffler = water.muffler() ? texts.get("crank.muffler", whole(water.timeToFlood().orElseThrow()), whole(water.allowed())) : "";
        String untimed = water.untimed() > 0 ? texts.get("crank.untimed", water.untimed()) : "";
        String untold = water.untold() > 0 ? texts.get("crank.untold", water.untold()) : "";
        return String.join(" ", List.of(attempt, total, muffler, untimed, untold).stream().filter(words -> !words.isEmpty()).toList());
    }

    private String missing(CrankingWater water) {
        if (water.room().wrong().isPresent()) {
            return Leading.plain(texts.get("crank.wrong", water.room().wrong().get()));
        }
        List<String> keys = water.room().missing();
        return keys.isEmpty() ? "" : texts.get("crank.missing",
            String.join(", ", keys.stream().limit(4).map(key -> Leading.to(key, Places.name(desk, key))).toList()));
    }

    private static String text(TimeSpan time) {
        return time.toString();
    }

    /** Seconds left are told short rather than long. */
    private static String whole(TimeSpan time) {
        return String.valueOf((int) Math.floor(time.in("s") + 1e-9));
    }

    @Override
    public boolean reveal(String key) {
        return attempts.reveal(key);
    }

    @Override
    public void setFocus() {
        bar.setFocus();
    }
}
