// SPDX-License-Identifier: EPL-2.0
package garboard.checks;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.POINT__X;
import static garboard.model.GarboardPackage.Literals.SIPHON_BREAK__VENT_HOSE;
import static garboard.model.GarboardPackage.Literals.SIPHON_BREAK__VENT_SEAT;
import static garboard.model.GarboardPackage.Literals.VESSEL__BEAM;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.model.GarboardFactory;
import garboard.model.SiphonBreak;
import garboard.model.SiphonBreakKind;
import garboard.model.VentHoseEnd;
import garboard.quantity.Length;
import garboard.quantity.Temperature;

class JudgeTest {

    @ParameterizedTest
    @CsvSource({ "301 mm, MEETS", "300 mm, MEETS", "299 mm, FALLS_SHORT", "0.3 m, MEETS", "12 in, MEETS", "11.8 in, FALLS_SHORT",
            "305 mm ±10 mm, BORDERLINE", "295 mm ±10 mm, BORDERLINE", "311 mm ±10 mm, MEETS", "289 mm ±10 mm, FALLS_SHORT",
            "310 mm ±10 mm, MEETS", "0 mm, FALLS_SHORT", "-50 mm, FALLS_SHORT" })
    void standsByTheSideOfTheLimitAndTheUncertainty(String height, Standing expected) {
        assertThat(Samples.judgeOne(Samples.height().build(), Samples.seatAt(height)).standing()).isEqualTo(expected);
    }

    @Test
    void asksToMeasureAgainWhereOnlyTheAccuracyReachesOverTheLimit() {
        Remedy remedy = Samples.judgeOne(Samples.height().build(), Samples.seatAt("305 mm ±10 mm")).remedy().orElseThrow();
        assertThat(remedy.text()).startsWith("Measure again").endsWith("Raise it");
        assertThat(remedy.changes()).isEmpty();
        Check<SiphonBreak> atTheWorst = Samples.height().remedyAtTheWorst("Raise it", s -> Optional.of(Remedy.of("Raise it to 310 mm"))).build();
        assertThat(Samples.judgeOne(atTheWorst, Samples.seatAt("305 mm ±10 mm")).remedy().orElseThrow().text()).isEqualTo("Raise it to 310 mm");
        assertThat(Samples.judgeOne(Samples.height().build(), Samples.seatAt("300 mm ±10 mm")).remedy().orElseThrow().changes()).isEmpty();
        assertThat(Samples.judgeOne(Samples.height().build(), Samples.seatAt("295 mm ±10 mm")).remedy().orElseThrow().text())
            .isEqualTo("Raise it to 300 mm");
    }

    @Test
    void tellsTheMarginInTheQuantityAndInPerCent() {
        Verdict verdict = Samples.judgeOne(Samples.height().build(), Samples.seatAt("240 mm"));
        Margin margin = verdict.margin().orElseThrow();
        assertThat(margin.distance().in("mm")).isCloseTo(-60, within(1e-9));
        assertThat(margin.perCent().orElseThrow()).isCloseTo(-20, within(1e-9));
        assertThat(verdict.limit().orElseThrow().origin()).isEqualTo("common practice");
        assertThat(verdict.remedy().orElseThrow().text()).isEqualTo("Raise it to 300 mm");
    }

    @Test
    void offersNoRemedyForWhatMeets() {
        assertThat(Samples.judgeOne(Samples.height().build(), Samples.seatAt("400 mm")).remedy()).isEmpty();
    }

    @Test
    void atMostCountsTheMarginFromBelow() {
        Check<?> check = Samples.comparing(s -> Comparison.atMost("", s.subject().getVentSeat().getZ(), Limit.of(Length.of(500, "mm"), "x")));
        Verdict verdict = Samples.judgeOne(check, Samples.seatAt("450 mm"));
        assertThat(verdict.standing()).isEqualTo(Standing.MEETS);
        assertThat(verdict.margin().orElseThrow().distance().in("mm")).isCloseTo(50, within(1e-9));
        assertThat(Samples.judgeOne(check, Samples.seatAt("501 mm")).standing()).isEqualTo(Standing.FALLS_SHORT);
    }

    @ParameterizedTest
    @CsvSource({ "300 mm, FALLS_SHORT", "301 mm, MEETS" })
    void moreThanRefusesTheLimitItself(String height, Standing expected) {
        Check<?> check = Samples.comparing(s -> Comparison.moreThan("", s.subject().getVentSeat().getZ(), Limit.of(Length.of(300, "mm"), "x")));
        assertThat(Samples.judgeOne(check, Samples.seatAt(height)).standing()).isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource({ "199 mm, FALLS_SHORT, -1", "200 mm, MEETS, 0", "210 mm, MEETS, 10", "395 mm, MEETS, 5", "401 mm, FALLS_SHORT, -1" })
    void betweenTellsTheMarginFromTheNearerLimit(String height, Standing expected, double marginMm) {
        Check<?> check = Samples.comparing(s -> Comparison.between("", s.subject().getVentSeat().getZ(),
                Limit.of(Length.of(200, "mm"), "x"), Limit.of(Length.of(400, "mm"), "x")));
        Verdict verdict = Samples.judgeOne(check, Samples.seatAt(height));
        assertThat(verdict.standing()).isEqualTo(expected);
        assertThat(verdict.margin().orElseThrow().distance().in("mm")).isCloseTo(marginMm, within(1e-6));
    }

    @Test
    void aTemperatureHasAMarginInDegreesAndNoPerCent() {
        Check<?> check = Samples.comparing(s -> Comparison.atMost("", Temperature.of(50, "degC"), Limit.of(Temperature.of(60, "degC"), "x")));
        Margin margin = Samples.judgeOne(check, Samples.seatAt("1 m")).margin().orElseThrow();
        assertThat(margin.distance().si()).isCloseTo(10, within(1e-9));
        assertThat(margin.perCent()).isEmpty();
    }

    @Test
    void cannotTellNamesEveryMissingInputAtOnce() {
        Check<?> check = Samples.height().needs(path(SIPHON_BREAK__VENT_SEAT, POINT__X)).needs(VESSEL__BEAM).build();
        Verdict verdict = Samples.judgeOne(check, Samples.withBreak());
        assertThat(verdict.standing()).isEqualTo(Standing.CANNOT_TELL);
        assertThat(verdict.missing()).extracting(Missing::key).containsExactly("rawWater.siphonBreak.ventSeat.z",
                "rawWater.siphonBreak.ventSeat.x", "vessel.beam");
        assertThat(verdict.missing().getLast().feature().getName()).isEqualTo("vessel");
    }

    @Test
    void cannotTellNamesEveryInputThatAConditionAsksForAtOnce() {
        Check<?> check = Samples.height().needsWhen(s -> true, path(SIPHON_BREAK__VENT_SEAT, POINT__X), path(VESSEL__BEAM))
            .needsWhen(s -> s.vessel().getBeam().si() > 3, path(SIPHON_BREAK__VENT_HOSE)).build();
        var record = Samples.seatAt("350 mm");
        assertThat(Samples.judgeOne(check, record).missing()).extracting(Missing::key)
            .containsExactly("rawWater.siphonBreak.ventSeat.x", "vessel.beam");
        record.setVessel(GarboardFactory.eINSTANCE.createVessel());
        record.getVessel().setBeam(Length.of(4, "m"));
        assertThat(Samples.judgeOne(check, record).missing()).extracting(Missing::key)
            .containsExactly("rawWater.siphonBreak.ventSeat.x", "rawWater.siphonBreak.ventHose");
    }

    @Test
    void whatIsNeededOnAConditionIsNotAskedForBeforeItCanBeDecided() {
        Check<?> check = Samples.height().needsWhen(s -> true, path(VESSEL__BEAM)).build();
        assertThat(Samples.judgeOne(check, Samples.withBreak()).missing()).extracting(Missing::key)
            .containsExactly("rawWater.siphonBreak.ventSeat.z");
    }

    @Test
    void aFaultInTheConditionOfANeedIsShown() {
        Check<?> check = Samples.height().needsWhen(s -> {
            throw new IllegalStateException("a fault");
        }, path(VESSEL__BEAM)).build();
        assertThat(Samples.judgeOne(check, Samples.seatAt("350 mm")).standing()).isEqualTo(Standing.CHECK_BROKE);
    }

    @Test
    void advisesNothingWhereTheGraverCheckFallsShort() {
        Check<SiphonBreak> advice = Samples.advised().applies(SteppingBack.where(Samples.height().build())).build();
        assertThat(Samples.judgeOne(advice, Samples.seatAt("299 mm")).standing()).isEqualTo(Standing.DOES_NOT_APPLY);
        assertThat(Samples.judgeOne(advice, Samples.seatAt("299 mm")).sentence()).contains("SAMPLE-HEIGHT");
        assertThat(Samples.judgeOne(advice, Samples.seatAt("300 mm")).standing()).isEqualTo(Standing.FALLS_SHORT);
        assertThat(Samples.judgeOne(advice, Samples.seatAt("450 mm")).standing()).isEqualTo(Standing.MEETS);
        assertThat(Samples.judgeOne(advice, Samples.withBreak()).standing()).isEqualTo(Standing.CANNOT_TELL);
        assertThat(Samples.judgeOne(advice, GarboardFactory.eINSTANCE.createCommissioningRecord()).standing()).isEqualTo(Standing.CANNOT_TELL);
    }

    @Test
    void whatTheGraverCheckReadsIsReadByTheAdviceToo() {
        Check<SiphonBreak> advice = Samples.advised().applies(SteppingBack.where(Samples.height().build())).build();
        assertThat(advice.reads()).containsAll(Samples.height().build().reads());
    }

    @Test
    void cannotTellWhatMustNotBeConverted() {
        Verdict verdict = Samples.judgeOne(Samples.comparing(s -> Comparison.undecided("the two are by different tests")), Samples.seatAt("1 m"));
        assertThat(verdict.standing()).isEqualTo(Standing.CANNOT_TELL);
        assertThat(verdict.sentence()).isEqualTo("the two are by different tests");
        assertThat(verdict.missing()).isEmpty();
        assertThat(verdict.remedy()).isPresent();
    }

    @Test
    void cannotTellWhenTheSubjectIsNotInTheRecord() {
        Verdict verdict = Samples.judgeOne(Samples.height().build(), GarboardFactory.eINSTANCE.createCommissioningRecord());
        assertThat(verdict.standing()).isEqualTo(Standing.CANNOT_TELL);
        assertThat(verdict.missing()).extracting(Missing::key).containsExactly("rawWater.siphonBreak");
    }

    @Test
    void doesNotApplyWhenAnotherPartRulesItOutThoughTheSubjectIsNotInTheRecord() {
        Check<?> check = Samples.height().applies(Condition.<garboard.model.SiphonBreak>when("broad boats").known(path(VESSEL__BEAM))
            .test(s -> s.vessel().getBeam().si() > 3, "the boat is narrow")).build();
        var record = GarboardFactory.eINSTANCE.createCommissioningRecord();
        record.setVessel(GarboardFactory.eINSTANCE.createVessel());
        assertThat(Samples.judgeOne(check, record).standing()).isEqualTo(Standing.CANNOT_TELL);
        record.getVessel().setBeam(Length.of(2, "m"));
        assertThat(Samples.judgeOne(check, record).standing()).isEqualTo(Standing.DOES_NOT_APPLY);
        assertThat(Samples.judgeOne(check, record).sentence()).isEqualTo("the boat is narrow");
        record.getVessel().setBeam(Length.of(4, "m"));
        assertThat(Samples.judgeOne(check, record).standing()).isEqualTo(Standing.CANNOT_TELL);
    }

    @Test
    void cannotTellWhenTheConditionIsUndecided() {
        var record = Samples.seatAt("1 m");
        record.getRawWater().getSiphonBreak().eUnset(garboard.model.GarboardPackage.Literals.SIPHON_BREAK__KIND);
        assertThat(Samples.judgeOne(Samples.height().build(), record).missing()).extracting(Missing::key)
                .containsExactly("rawWater.siphonBreak.kind");
    }

    @Test
    void aConditionIsDecidedWithoutWhatItOnlyUsesAndReadsItAllTheSame() {
        Check<?> check = Samples.height().applies(Condition.<SiphonBreak>when("unless one is led to the bilge").known()
                .uses(path(SIPHON_BREAK__VENT_HOSE)).test(s -> s.subject().getVentHose() != VentHoseEnd.BILGE, "led to the bilge")).build();
        var record = Samples.seatAt("350 mm");
        assertThat(Samples.judgeOne(check, record).standing()).isEqualTo(Standing.MEETS);
        record.getRawWater().getSiphonBreak().setVentHose(VentHoseEnd.BILGE);
        assertThat(Samples.judgeOne(check, record).sentence()).isEqualTo("led to the bilge");
        assertThat(check.reads()).contains(SIPHON_BREAK__VENT_HOSE);
    }

    @Test
    void doesNotApplyWithItsReasonEvenWhenInputsAreMissing() {
        var record = Samples.withBreak();
        record.getRawWater().getSiphonBreak().setKind(SiphonBreakKind.NONE);
        Verdict verdict = Samples.judgeOne(Samples.height().build(), record);
        assertThat(verdict.standing()).isEqualTo(Standing.DOES_NOT_APPLY);
        assertThat(verdict.sentence()).isEqualTo("no siphon break is fitted");
    }

    @Test
    void theMakersLimitReplacesCommonPracticeAndIsNamed() {
        var record = Samples.seatAt("350 mm");
        Samples.makersHeight(record, "400 mm");
        Verdict verdict = Samples.judgeOne(Samples.height().build(), record);
        assertThat(verdict.standing()).isEqualTo(Standing.FALLS_SHORT);
        assertThat(verdict.limit().orElseThrow().fromMaker()).isTrue();
        assertThat(verdict.limit().orElseThrow().origin()).isEqualTo("maker's limit");
    }

    @Test
    void theMakersLimitNeverReplacesARegulation() {
        var record = Samples.seatAt("350 mm");
        Samples.makersHeight(record, "100 mm");
        Check<?> law = Samples.height().basis(Basis.regulation("1 XYZ 1", Basis.Status.RETRIEVED)).build();
        assertThat(Samples.judgeOne(law, record).standing()).isEqualTo(Standing.CHECK_BROKE);
    }

    @Test
    void aBrokenCheckIsShownAndTheOthersGoOn() {
        Check<?> broken = Samples.comparing(s -> {
            throw new IllegalStateException("division by zero flow");
        });
        Catalogue catalogue = Catalogue.of(Samples.practice("sample", broken, Samples.length()));
        Evaluation evaluation = new Evaluator(catalogue).evaluate(Samples.seatAt("1 m"), Samples.DAY);
        assertThat(evaluation.verdicts()).extracting(Verdict::standing).containsExactly(Standing.CHECK_BROKE, Standing.CANNOT_TELL);
        assertThat(evaluation.verdicts().getFirst().sentence()).contains("division by zero flow");
        assertThat(evaluation.checkBroke()).isTrue();
    }

    @Test
    void anEntryThatCannotBeRightTellsNothingAndIsNamed() {
        Check<?> check = Samples.comparing(s -> {
            throw new NegativeBore();
        });
        Verdict verdict = Samples.judgeOne(check, Samples.seatAt("1 m"));
        assertThat(verdict.standing()).isEqualTo(Standing.CANNOT_TELL);
        assertThat(verdict.sentence()).contains("bore is -5 mm");
    }

    private static final class NegativeBore extends IllegalArgumentException implements garboard.quantity.ImplausibleInput {
        private static final long serialVersionUID = 1L;

        NegativeBore() {
            super("bore is -5 mm, but has to be more than 0");
        }
    }

    @Test
    void aPlainQuestionFallsShortWithoutNumbers() {
        Verdict verdict = Samples.judgeOne(Samples.comparing(s -> Comparison.holds("the vent is blocked", false)), Samples.seatAt("1 m"));
        assertThat(verdict.standing()).isEqualTo(Standing.FALLS_SHORT);
        assertThat(verdict.measured()).isEmpty();
        assertThat(verdict.margin()).isEmpty();
        assertThat(verdict.sentence()).isEqualTo("the vent is blocked");
    }
}
