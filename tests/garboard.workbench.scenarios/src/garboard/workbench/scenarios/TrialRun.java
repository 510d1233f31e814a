// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.scenarios;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.Trial;
import garboard.model.io.RecordFile;

/** The first start step by step, and a load step with its readings. */
public abstract class TrialRun extends Scenario {

    @Test
    void theFirstStartIsLedStepByStepAndTheReadingsAreKept() throws Exception {
        Hand hand = open();
        hand.press("start.new");
        hand.pick("walk.tree", "First start");
        hand.press("step:start-conditions");
        hand.keys("Enter");
        hand.press("step.answer.YES");
        hand.pick("walk.tree", "Load trial");
        hand.press("load.make");
        hand.press("garboard.tool.undo");
        hand.press("garboard.tool.redo");

        Path file = folder.resolve("trial.garboard");
        answers().nextFile(file);
        hand.press("garboard.tool.save");
        hand.await("the record on the disk", () -> Files.exists(file));
        Trial trial = RecordFile.open(file).record().getTrial();
        assertThat(trial.getProcedure()).anyMatch(step -> step.getAt() != null && step.getDone() == Answer.YES);
        // 0, 25, 50, 75 and 100 % of the rated power
        assertThat(trial.getLoadSteps()).extracting(step -> Math.round(step.getLoad().si() * 100)).containsExactly(0L, 25L, 50L, 75L, 100L);
    }
}
