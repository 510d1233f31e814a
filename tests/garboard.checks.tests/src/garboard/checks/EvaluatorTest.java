// SPDX-License-Identifier: EPL-2.0
package garboard.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;

import org.eclipse.emf.common.util.Diagnostic;
import org.eclipse.emf.ecore.impl.EValidatorRegistryImpl;
import org.eclipse.emf.ecore.util.Diagnostician;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.model.Acceptance;
import garboard.model.CableFunction;
import garboard.model.CableRun;
import garboard.model.CommissioningRecord;
import garboard.model.GarboardFactory;
import garboard.model.GarboardPackage;
import garboard.quantity.Length;

class EvaluatorTest {

    private static CableRun cable(String id, CableFunction function, String length) {
        CableRun cable = GarboardFactory.eINSTANCE.createCableRun();
        cable.setId(id);
        cable.setFunction(function);
        cable.setLength(Length.valueOf(length));
        return cable;
    }

    private static CommissioningRecord withCables(CableRun... cables) {
        CommissioningRecord record = Samples.seatAt("200 mm");
        record.setStartingBattery(GarboardFactory.eINSTANCE.createStartingBattery());
        record.getStartingBattery().getCables().addAll(List.of(cables));
        return record;
    }

    @Test
    void judgesEachElementThatTheCheckChoosesByItself() {
        var record = withCables(cable("cable-1", CableFunction.CRANKING_POSITIVE, "4 m"), cable("cable-2", CableFunction.CONTROL, "9 m"),
                cable("cable-3", CableFunction.CRANKING_POSITIVE, "2 m"));
        List<Verdict> verdicts = Samples.judge(Samples.length(), record);
        assertThat(verdicts).extracting(Verdict::subjectKey).containsExactly("startingBattery.cables[cable-1]",
                "startingBattery.cables[cable-3]");
        assertThat(verdicts).extracting(Verdict::standing).containsExactly(Standing.FALLS_SHORT, Standing.MEETS);
    }

    @Test
    void anEmptyListOfSubjectsCannotTell() {
        Verdict verdict = Samples.judgeOne(Samples.length(), withCables());
        assertThat(verdict.standing()).isEqualTo(Standing.CANNOT_TELL);
        assertThat(verdict.missing()).extracting(Missing::key).containsExactly("startingBattery.cables");
    }

    @Test
    void listsTheWorstFirstAndTheGravestFirstWithinIt() {
        var catalogue = Catalogue.of(Samples.practice("sample", Samples.length(), Samples.height().build()));
        var record = withCables(cable("cable-1", CableFunction.CRANKING_POSITIVE, "2 m"), cable("cable-2", CableFunction.CRANKING_POSITIVE, "5 m"));
        Evaluation evaluation = new Evaluator(catalogue).evaluate(record, Samples.DAY);
        assertThat(evaluation.worstFirst()).extracting(verdict -> verdict.check().id() + " " + verdict.standing()).containsExactly(
                "SAMPLE-HEIGHT FALLS_SHORT", "SAMPLE-LENGTH FALLS_SHORT", "SAMPLE-LENGTH MEETS");
        assertThat(evaluation.fallsShort()).isTrue();
    }

    @Test
    void anEditTouchesOnlyTheChecksThatReadTheFeature() {
        var evaluator = new Evaluator(Catalogue.of(Samples.practice("sample", Samples.length(), Samples.height().build())));
        var record = withCables(cable("cable-1", CableFunction.CRANKING_POSITIVE, "2 m"));
        assertThat(evaluator.reevaluate(GarboardPackage.Literals.CABLE_RUN__FUNCTION, record, Samples.DAY))
                .extracting(verdict -> verdict.check().id()).containsExactly("SAMPLE-LENGTH");
        assertThat(evaluator.reevaluate(GarboardPackage.Literals.POINT__Z, record, Samples.DAY))
                .extracting(verdict -> verdict.check().id()).containsExactly("SAMPLE-HEIGHT");
        assertThat(evaluator.reevaluate(GarboardPackage.Literals.VESSEL__FLAG, record, Samples.DAY)).isEmpty();
    }

    @Test
    void severalEditedFeaturesHaveEachOfTheirReadersJudgedOnceInTheCataloguesOrder() {
        var evaluator = new Evaluator(Catalogue.of(Samples.practice("sample", Samples.length(), Samples.height().build())));
        var record = withCables(cable("cable-1", CableFunction.CRANKING_POSITIVE, "2 m"));
        assertThat(evaluator.reevaluate(List.of(GarboardPackage.Literals.POINT__Z, GarboardPackage.Literals.CABLE_RUN__FUNCTION,
                GarboardPackage.Literals.CABLE_RUN__LENGTH), record, Samples.DAY))
                .extracting(verdict -> verdict.check().id()).containsExactly("SAMPLE-LENGTH", "SAMPLE-HEIGHT");
    }

    @Test
    void aPartThatComesOrGoesTouchesEveryCheck() {
        var evaluator = new Evaluator(Catalogue.of(Samples.practice("sample", Samples.length(), Samples.height().build())));
        assertThat(evaluator.reevaluate(GarboardPackage.Literals.COMMISSIONING_RECORD__RAW_WATER, Samples.seatAt("1 m"), Samples.DAY)).hasSize(2);
    }

    @Test
    void holdsARecordOnlyAgainstThePracticesThatItNamesAndSaysWhichIsNotAtHand() {
        var catalogue = Catalogue.of(Samples.practice("first", Samples.length()), Samples.practice("second", Samples.height().build()));
        var record = Samples.seatAt("1 m");
        record.getPractices().addAll(List.of("second", "of-another-yard"));
        Evaluation evaluation = new Evaluator(catalogue).evaluate(record, Samples.DAY);
        assertThat(evaluation.verdicts()).extracting(verdict -> verdict.check().id()).containsExactly("SAMPLE-HEIGHT");
        assertThat(evaluation.practicesNotAtHand()).containsExactly("of-another-yard");
    }

    @Test
    void twoChecksCannotShareAnId() {
        assertThatThrownBy(() -> Catalogue.of(Samples.practice("first", Samples.length()), Samples.practice("second", Samples.length())))
                .hasMessageContaining("SAMPLE-LENGTH").hasMessageContaining("Practice first").hasMessageContaining("Practice second");
    }

    @Test
    void anIncompleteDeclarationIsRefusedNamingWhatItLacks() {
        assertThatThrownBy(() -> Check.check("SAMPLE-X", CableRun.class).build()).hasMessageContaining("SAMPLE-X").hasMessageContaining("title");
        assertThatThrownBy(() -> Check.check("sample", CableRun.class)).hasMessageContaining("sample");
    }

    @ParameterizedTest
    @CsvSource(nullValues = "-", value = { "A. Yard, berth too low to raise it, -, ACCEPTED", "A. Yard, -, -, FALLS_SHORT", "-, no room, -, FALLS_SHORT",
            "A. Yard, no room, 2026-05-31, FALLS_SHORT", "A. Yard, no room, 2026-06-01, ACCEPTED" })
    void anAcceptanceNeedsANameAndAReasonAndRunsOut(String who, String why, LocalDate until, Standing expected) {
        var record = Samples.seatAt("200 mm");
        record.getAcceptances().add(acceptance(who, why, until));
        Verdict verdict = Samples.judgeOne(Samples.height().build(), record);
        assertThat(verdict.standing()).isEqualTo(expected);
        assertThat(verdict.acceptance()).isPresent();
        assertThat(verdict.measured()).isPresent();
    }

    @Test
    void aRegulationCannotBeAcceptedAway() {
        var record = Samples.seatAt("200 mm");
        record.getAcceptances().add(acceptance("A. Yard", "no room", null));
        Check<?> law = Samples.height().basis(Basis.regulation("1 XYZ 1", Basis.Status.RETRIEVED)).build();
        Verdict verdict = Samples.judgeOne(law, record);
        assertThat(verdict.standing()).isEqualTo(Standing.FALLS_SHORT);
        assertThat(verdict.acceptance().orElseThrow()).contains("cannot be accepted away").contains("A. Yard");
    }

    private static Acceptance acceptance(String who, String why, LocalDate until) {
        Acceptance acceptance = GarboardFactory.eINSTANCE.createAcceptance();
        acceptance.setCheck("SAMPLE-HEIGHT");
        acceptance.setAcceptedBy(who);
        acceptance.setReason(why);
        acceptance.setUntil(until);
        return acceptance;
    }

    @Test
    void emfValidationReportsTheVerdictsWithSourceSubjectAndFeature() {
        var evaluator = new Evaluator(Catalogue.of(Samples.practice("sample", Samples.height().build(), Samples.length())));
        var registry = new EValidatorRegistryImpl();
        registry.put(GarboardPackage.eINSTANCE, new PracticeValidator(evaluator, Clock.fixed(Instant.parse("2026-06-01T10:00:00Z"), ZoneOffset.UTC)));
        var record = Samples.seatAt("200 mm");
        Diagnostic diagnostic = new Diagnostician(registry).validate(record);
        assertThat(diagnostic.getSeverity()).isEqualTo(Diagnostic.ERROR);
        assertThat(diagnostic.getChildren()).extracting(Diagnostic::getSource).containsExactly("SAMPLE-HEIGHT", "SAMPLE-LENGTH");
        assertThat(diagnostic.getChildren().getFirst().getData().getFirst()).isSameAs(record.getRawWater().getSiphonBreak());
        assertThat(diagnostic.getChildren().getLast().getData().get(1))
                .isSameAs(GarboardPackage.Literals.COMMISSIONING_RECORD__STARTING_BATTERY);
    }
}
