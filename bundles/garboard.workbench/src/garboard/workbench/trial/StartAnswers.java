// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.trial;

import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.List;

import garboard.checks.Verdict;
import garboard.model.Answer;
import garboard.session.OpenRecord;
import garboard.session.trial.StartConditions;
import garboard.session.trial.StartLine;
import garboard.session.trial.StartProcedure;
import garboard.session.trial.StartStep;
import garboard.workbench.Desk;
import garboard.workbench.text.Texts;

/** What a press at a step does. Whoever says that the conditions were gone through leaves in the record what stood open then. */
final class StartAnswers {

    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm");

    private final OpenRecord record;
    private final Desk desk;
    private final StartProcedure procedure;
    private final StartWording wording;
    private final Texts.Of texts;

    StartAnswers(OpenRecord record, Desk desk, StartProcedure procedure, StartWording wording) {
        this.record = record;
        this.desk = desk;
        this.procedure = procedure;
        this.wording = wording;
        this.texts = desk.texts(StartAnswers.class);
    }

    void answer(StartLine line, Answer answer) {
        if (line.answer() == answer) {
            return;
        }
        String label = label(line);
        record.edits().together(label, () -> {
            procedure.answer(line, answer, label);
            if (answer == Answer.YES && line.guided().filter(StartStep.CONDITIONS::equals).isPresent()) {
                procedure.note(line, standing(), label);
            }
        });
    }

    void takeIn() {
        procedure.takeIn(texts.get("step.takeIn.undo"));
    }

    private String label(StartLine line) {
        return texts.get("step.undo", wording.title(line));
    }

    private String standing() {
        var conditions = StartConditions.of(record.verdicts().evaluation());
        String at = LocalTime.now(desk.clock()).format(CLOCK);
        List<String> open = conditions.shortfalls().stream().map(Verdict::check).map(check -> check.id()).distinct().toList();
        String shortfalls = open.isEmpty() ? texts.get("conditions.note.none", at) : texts.get("conditions.note.open", at, String.join(", ", open));
        return conditions.cannotTell() == 0 ? shortfalls : shortfalls + " " + texts.get("conditions.note.unknown", conditions.cannotTell());
    }
}
