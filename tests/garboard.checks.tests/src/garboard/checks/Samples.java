// SPDX-License-Identifier: EPL-2.0
package garboard.checks;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.CABLE_RUN__FUNCTION;
import static garboard.model.GarboardPackage.Literals.CABLE_RUN__LENGTH;
import static garboard.model.GarboardPackage.Literals.MAKER_LIMITS__MINIMUM_SIPHON_BREAK_HEIGHT;
import static garboard.model.GarboardPackage.Literals.POINT__Z;
import static garboard.model.GarboardPackage.Literals.SIPHON_BREAK__KIND;
import static garboard.model.GarboardPackage.Literals.SIPHON_BREAK__VENT_SEAT;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

import garboard.model.CableFunction;
import garboard.model.CableRun;
import garboard.model.CommissioningRecord;
import garboard.model.GarboardFactory;
import garboard.model.MakerLimits;
import garboard.model.SiphonBreak;
import garboard.model.SiphonBreakKind;
import garboard.quantity.Length;

/** Small checks and records for tests of the engine; no rule of any practice. */
final class Samples {

    static final LocalDate DAY = LocalDate.of(2026, 6, 1);

    private Samples() {
    }

    /** A height of at least 300 mm, or the maker's. */
    static Check.Builder<SiphonBreak> height() {
        return Check.check("SAMPLE-HEIGHT", SiphonBreak.class).title("The vent seat is high enough").why("Else it floods.")
                .basis(Basis.commonPractice()).gravity(Gravity.DANGER_TO_MACHINE).limit("at least 300 mm, or the maker's")
                .applies(Condition.<SiphonBreak>when("a break is fitted").known(path(SIPHON_BREAK__KIND))
                        .test(s -> s.subject().getKind() != SiphonBreakKind.NONE, "no siphon break is fitted"))
                .needs(path(SIPHON_BREAK__VENT_SEAT, POINT__Z)).uses(MAKER_LIMITS__MINIMUM_SIPHON_BREAK_HEIGHT)
                .holds(s -> Comparison.atLeast("the seat stands high", s.subject().getVentSeat().getZ(), Limit.makerOr(
                        s.maker(MakerLimits::getMinimumSiphonBreakHeight), Length.of(300, "mm"), "common practice")))
                .remedy("Raise it", s -> Optional.of(
                        Remedy.of("Raise it to 300 mm").setting(s.subject().getVentSeat(), POINT__Z, Length.of(300, "mm"))));
    }

    /** A height of 450 mm, as advice. */
    static Check.Builder<SiphonBreak> advised() {
        return Check.check("SAMPLE-ADVICE", SiphonBreak.class).title("The vent seat is high").why("Else it may flood.")
                .basis(Basis.commonPractice()).gravity(Gravity.ADVICE).limit("at least 450 mm").needs(path(SIPHON_BREAK__VENT_SEAT, POINT__Z))
                .holds(s -> Comparison.atLeast("the seat stands high", s.subject().getVentSeat().getZ(), Limit.of(Length.of(450, "mm"), "x")))
                .remedy("Raise it");
    }

    /** Cranking cables no longer than 3 m. */
    static Check<CableRun> length() {
        return Check.check("SAMPLE-LENGTH", CableRun.class)
                .among(cable -> cable.getFunction() == CableFunction.CRANKING_POSITIVE, path(CABLE_RUN__FUNCTION))
                .title("The cable is short enough").why("Else the starter starves.").basis(Basis.commonPractice())
                .gravity(Gravity.DEFECT).limit("at most 3 m").needs(CABLE_RUN__LENGTH)
                .holds(s -> Comparison.atMost("the cable is long", s.subject().getLength(), Limit.of(Length.of(3, "m"), "common practice")))
                .remedy("Shorten it").build();
    }

    /** The height check with another comparison. */
    static Check<SiphonBreak> comparing(Function<Situation<SiphonBreak>, Comparison> comparison) {
        return height().holds(comparison).build();
    }

    /** A record with a valved siphon break whose seat is this high. */
    static CommissioningRecord seatAt(String height) {
        CommissioningRecord record = withBreak();
        record.getRawWater().getSiphonBreak().setVentSeat(GarboardFactory.eINSTANCE.createPoint());
        record.getRawWater().getSiphonBreak().getVentSeat().setZ(Length.valueOf(height));
        return record;
    }

    /** A record with a valved siphon break of unknown height. */
    static CommissioningRecord withBreak() {
        GarboardFactory factory = GarboardFactory.eINSTANCE;
        CommissioningRecord record = factory.createCommissioningRecord();
        record.setRawWater(factory.createRawWaterCircuit());
        record.getRawWater().setSiphonBreak(factory.createSiphonBreak());
        record.getRawWater().getSiphonBreak().setKind(SiphonBreakKind.VALVED_VENTED_LOOP);
        return record;
    }

    static void makersHeight(CommissioningRecord record, String height) {
        record.setGeneratorSet(GarboardFactory.eINSTANCE.createGeneratorSet());
        record.getGeneratorSet().setMakerLimits(GarboardFactory.eINSTANCE.createMakerLimits());
        record.getGeneratorSet().getMakerLimits().setMinimumSiphonBreakHeight(Length.valueOf(height));
    }

    static Practice practice(String id, Check<?>... checks) {
        return new Practice() {
            @Override
            public String id() {
                return id;
            }

            @Override
            public String name() {
                return "Practice " + id;
            }

            @Override
            public String appliesTo() {
                return "tests";
            }

            @Override
            public List<Check<?>> checks() {
                return List.of(checks);
            }
        };
    }

    static List<Verdict> judge(Check<?> check, CommissioningRecord record) {
        return new Evaluator(Catalogue.of(practice("sample", check))).evaluate(record, DAY).verdicts();
    }

    static Verdict judgeOne(Check<?> check, CommissioningRecord record) {
        List<Verdict> verdicts = judge(check, record);
        if (verdicts.size() != 1) {
            throw new AssertionError("one verdict expected, not " + verdicts.size());
        }
        return verdicts.getFirst();
    }
}
