// SPDX-License-Identifier: EPL-2.0
package garboard.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;

import garboard.model.AlarmDevice;
import garboard.model.Answer;
import garboard.model.CrankingAttempt;
import garboard.model.GarboardPackage;
import garboard.model.ProcedureStep;
import garboard.model.SeacockState;
import garboard.model.TestResult;
import garboard.model.Trial;
import garboard.quantity.Quantity;
import garboard.quantity.TimeSpan;

/** The dock and sea trial: conditions, steps, cranking, readings under load, shutdown tests, sea run. */
final class TrialSheet {

    static final String NAME = "Trial";

    private final Material material;
    private final Trial trial;
    private final List<Block> blocks = new ArrayList<>();

    private TrialSheet(Material material, Trial trial) {
        this.material = material;
        this.trial = trial;
    }

    static Optional<Sheet> of(Material material) {
        Trial trial = material.record().getTrial();
        if (trial == null || !garboard.model.Entered.anythingIn(trial)) {
            return Optional.empty();
        }
        var sheet = new TrialSheet(material, trial);
        sheet.addFields("", trial);
        sheet.addProcedure();
        sheet.addFieldsOf("Fuel priming", trial.getPriming());
        sheet.addCranking();
        sheet.addShutdownTests();
        sheet.addFieldsOf("Sea run", trial.getSeaRun());
        if (sheet.blocks.isEmpty()) {
            return Optional.empty(); // readings only, and those have a sheet of their own
        }
        return Optional.of(new Sheet(NAME, "Dock and sea trial", Orientation.LANDSCAPE, sheet.blocks));
    }

    private void addFieldsOf(String heading, EObject part) {
        if (part != null) {
            addFields(heading, part);
        }
    }

    private void addFields(String heading, EObject part) {
        List<Block.Entry> entries = ParticularsSheet.fields(part.eClass()).stream().filter(part::eIsSet)
            .map(field -> new Block.Entry(material.labels().label(field), Cell.text(words(part, field)))).toList();
        if (entries.isEmpty()) {
            return;
        }
        if (!heading.isEmpty()) {
            blocks.add(new Block.Heading(heading));
        }
        blocks.add(new Block.KeyValues(entries));
    }

    private String words(EObject part, EAttribute field) {
        return part.eGet(field) instanceof Quantity<?> quantity ? material.inBoth(quantity, field) : FieldValue.of(part, field, material).given();
    }

    private void addProcedure() {
        if (trial.getProcedure().isEmpty()) {
            return;
        }
        blocks.add(new Block.Heading("Start procedure"));
        var table = Table.of(Table.number("number", "No", 14), Table.text("step", "Step", 119), Table.text("done", "Done", 26),
            Table.text("at", "At", 36), Table.text("note", "Note", 74));
        for (ProcedureStep step : trial.getProcedure()) {
            table.row(step.getNumber() == null ? Cell.BLANK : Cell.count(step.getNumber()), Cell.text(Material.orEmpty(step.getStep())),
                Cell.text(answer(step.getDone())), Days.moment(step.getAt()), Cell.text(Material.orEmpty(step.getNote())));
        }
        blocks.add(table.build());
    }

    private void addCranking() {
        if (trial.getAttempts().isEmpty()) {
            return;
        }
        blocks.add(new Block.Heading("Cranking"));
        var table = Table.of(Table.number("number", "No", 14), Table.text("at", "At", 36), Table.number("cranked", "Cranked s", 30),
            Table.number("rested", "Rested s", 30), Table.text("seacock", "Seacock", 30), Table.text("fired", "Fired", 25),
            Table.number("voltage", "Lowest voltage V", 36), Table.text("drained", "Muffler drained after", 68));
        int number = 1;
        for (CrankingAttempt attempt : trial.getAttempts()) {
            table.row(Cell.count(number), Days.moment(attempt.getAt()), seconds(attempt.getDuration()), seconds(attempt.getRest()),
                Cell.text(attempt.getSeacock() == SeacockState.NOT_ENTERED ? "" : material.labels().label(attempt.getSeacock())),
                Cell.text(answer(attempt.getFired())),
                attempt.getLowestVoltage() == null ? Cell.BLANK : new Cell.Number(attempt.getLowestVoltage().in("V"), 1),
                Cell.text(answer(attempt.getMufflerDrained())));
            number++;
        }
        table.total(Map.of("at", Cell.strong("Cranked in all"), "cranked", new Cell.Computed(Expression.total("cranked"), 0, false)));
        blocks.add(table.build());
    }

    private static Cell seconds(TimeSpan time) {
        return time == null ? Cell.BLANK : new Cell.Number(time.in("s"), time.si() == Math.rint(time.si()) ? 0 : 1);
    }

    private void addShutdownTests() {
        if (trial.getShutdownTests().isEmpty()) {
            return;
        }
        blocks.add(new Block.Heading("Shutdown tests"));
        var table = Table.of(Table.text("kind", "Shutdown", 70), Table.text("where", "Where", 70), Table.text("setting", "Setting", 59),
            Table.text("result", "Result", 40), Table.day("on", "Tested on", 30));
        for (AlarmDevice test : trial.getShutdownTests()) {
            boolean kind = test.eIsSet(GarboardPackage.Literals.ALARM_DEVICE__KIND);
            table.row(Cell.text(kind ? material.labels().label(test.getKind()) : ""), Cell.text(Material.orEmpty(test.getLocation())),
                Cell.text(Material.orEmpty(test.getSetting())),
                Cell.text(test.getTestResult() == TestResult.NOT_ENTERED ? "" : material.labels().label(test.getTestResult())),
                Days.cell(test.getTestedOn()));
        }
        blocks.add(table.build());
    }

    private String answer(Answer answer) {
        return answer == Answer.UNANSWERED ? "" : material.labels().label(answer);
    }
}
