// SPDX-License-Identifier: EPL-2.0
package garboard.session.verdicts;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.ALARMS_AND_SAFETY__REMOTE_STOP;
import static garboard.model.GarboardPackage.Literals.POINT__Z;
import static garboard.model.GarboardPackage.Literals.SIPHON_BREAK__VENT_SEAT;
import static garboard.model.GarboardPackage.Literals.WATER_HOSE_RUN__CLAMPS_PER_END;

import java.io.IOException;
import java.io.InputStream;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;

import garboard.checks.Basis;
import garboard.checks.Catalogue;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Practice;
import garboard.checks.Remedy;
import garboard.checks.Verdict;
import garboard.examples.Examples;
import garboard.model.AlarmsAndSafety;
import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.GarboardFactory;
import garboard.model.SiphonBreak;
import garboard.model.WaterHoseRun;
import garboard.model.io.RecordFile;
import garboard.model.io.RecordReadException;
import garboard.practice.FederalGasolineCraft;
import garboard.practice.HandbookPractice;
import garboard.practice.SmallCraftStandards;
import garboard.practice.SmallPassengerVessels;
import garboard.quantity.Length;
import garboard.session.OpenRecord;

/** Open records with verdicts: the examples against all practices, and a made one against a few checks of no practice. */
public final class Judged {

    public static final LocalDate DAY = LocalDate.of(2026, 6, 1);
    public static final Clock CLOCK = Clock.fixed(Instant.parse("2026-06-01T08:00:00Z"), ZoneOffset.UTC);

    private Judged() {
    }

    /** {@return all practices that come with the program} */
    public static Catalogue allPractices() {
        return Catalogue.of(new HandbookPractice(), new SmallCraftStandards(), new FederalGasolineCraft(), new SmallPassengerVessels());
    }

    /** {@return an example, held against all practices} */
    public static OpenRecord example(String name) {
        try (InputStream in = Examples.find(name).orElseThrow().open()) {
            return OpenRecord.of(RecordFile.read(in, name), Optional.empty(), allPractices(), CLOCK);
        } catch (IOException | RecordReadException broken) {
            throw new IllegalStateException(broken);
        }
    }

    /**
     * A vent seat 200 mm up, which one check wants at 300 mm and another below 250 mm; two hoses, one with a single clamp where two are
     * wanted, the other with nothing entered; no remote stop, which a regulation asks for.
     */
    public static OpenRecord made() {
        CommissioningRecord record = GarboardFactory.eINSTANCE.createCommissioningRecord();
        var water = GarboardFactory.eINSTANCE.createRawWaterCircuit();
        var loop = GarboardFactory.eINSTANCE.createSiphonBreak();
        var seat = GarboardFactory.eINSTANCE.createPoint();
        seat.setZ(Length.valueOf("200 mm"));
        loop.setVentSeat(seat);
        water.setSiphonBreak(loop);
        var first = GarboardFactory.eINSTANCE.createWaterHoseRun();
        first.setId("hose-1");
        first.setClampsPerEnd(1);
        var second = GarboardFactory.eINSTANCE.createWaterHoseRun();
        second.setId("hose-2");
        water.getHoses().addAll(List.of(first, second));
        record.setRawWater(water);
        var alarms = GarboardFactory.eINSTANCE.createAlarmsAndSafety();
        alarms.setRemoteStop(Answer.NO);
        record.setAlarms(alarms);
        return OpenRecord.of(RecordFile.of(record), Optional.empty(), Catalogue.of(practice()), CLOCK);
    }

    /** {@return the verdict of a check on a place} */
    public static Verdict verdict(OpenRecord record, String check, String subject) {
        return record.verdicts().evaluation().verdicts().stream().filter(verdict -> VerdictKey.of(verdict).equals(new VerdictKey(check, subject)))
            .findFirst().orElseThrow(() -> new AssertionError("no verdict of " + check + " on " + subject));
    }

    private static Practice practice() {
        return new Practice() {
            @Override
            public String id() {
                return "made";
            }

            @Override
            public String name() {
                return "Made for tests";
            }

            @Override
            public String appliesTo() {
                return "records of tests";
            }

            @Override
            public List<Check<?>> checks() {
                return List.of(low(), clamped(), high(), stoppable());
            }
        };
    }

    private static Check<SiphonBreak> low() {
        return Check.check("SEAT-LOW", SiphonBreak.class).title("The vent seat is in reach").why("Else nobody cleans it.")
            .basis(Basis.commonPractice()).gravity(Gravity.ADVICE).limit("at most 250 mm").needs(path(SIPHON_BREAK__VENT_SEAT, POINT__Z))
            .holds(on -> Comparison.atMost("the seat stands at " + on.subject().getVentSeat().getZ(), on.subject().getVentSeat().getZ(),
                Limit.of(Length.of(250, "mm"), "common practice")))
            .remedy("Lower it").build();
    }

    private static Check<SiphonBreak> high() {
        return Check.check("SEAT-HIGH", SiphonBreak.class).title("The vent seat is high enough").why("Else it floods.")
            .basis(Basis.handbook("Made-up handbook, ch. 1", Basis.Status.FROM_MEMORY)).gravity(Gravity.DANGER_TO_MACHINE).limit("at least 300 mm")
            .needs(path(SIPHON_BREAK__VENT_SEAT, POINT__Z))
            .holds(on -> Comparison.atLeast("the seat stands at " + on.subject().getVentSeat().getZ(), on.subject().getVentSeat().getZ(),
                Limit.of(Length.of(300, "mm"), "common practice")))
            .remedy("Raise it", on -> Optional.of(Remedy.of("Raise it to 300 mm").setting(on.subject().getVentSeat(), POINT__Z, Length.of(300, "mm"))))
            .build();
    }

    private static Check<WaterHoseRun> clamped() {
        return Check.check("HOSE-CLAMPED", WaterHoseRun.class).title("Two clamps on each end").why("One lets go.").basis(Basis.commonPractice())
            .gravity(Gravity.DANGER_TO_PEOPLE).limit("two").needs(WATER_HOSE_RUN__CLAMPS_PER_END)
            .holds(on -> Comparison.holds("the end has " + on.subject().getClampsPerEnd(), on.subject().getClampsPerEnd() > 1))
            .remedy("Put a second one").build();
    }

    private static Check<AlarmsAndSafety> stoppable() {
        return Check.check("REMOTE-STOP", AlarmsAndSafety.class).title("The set can be stopped from the helm").why("Else it runs on.")
            .basis(Basis.regulation("Made-up rule 12", Basis.Status.RETRIEVED)).gravity(Gravity.DANGER_TO_PEOPLE).limit("there is one")
            .needs(ALARMS_AND_SAFETY__REMOTE_STOP).holds(on -> Comparison.holds("there is none", on.subject().getRemoteStop() == Answer.YES))
            .remedy("Fit one").build();
    }
}
