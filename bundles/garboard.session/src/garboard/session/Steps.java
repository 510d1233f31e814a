// SPDX-License-Identifier: EPL-2.0
package garboard.session;

import java.util.List;
import java.util.Optional;

import org.eclipse.emf.common.command.BasicCommandStack;
import org.eclipse.emf.common.command.Command;

/** What was done to a record, step by step: how far it can be taken back and done again, and which step is still growing. */
final class Steps extends BasicCommandStack {

    private Optional<Step> growing = Optional.empty();
    private Optional<Gathering> gathering = Optional.empty();

    /** One step made of several edits; it begins with the first of them, so that none leaves nothing to undo. */
    private static final class Gathering {
        private final String label;
        private Optional<Step> step = Optional.empty();

        Gathering(String label) {
            this.label = label;
        }
    }

    /** Does a step. @return it, unless there is nothing to do */
    Optional<Step> take(String label, List<Command> commands) {
        growing = Optional.empty();
        if (commands.isEmpty()) {
            return Optional.empty();
        }
        if (gathering.isEmpty()) {
            return Optional.of(begin(label, commands));
        }
        Gathering several = gathering.get();
        if (several.step.isPresent()) {
            several.step.get().goOn(commands);
        } else {
            several.step = Optional.of(begin(several.label, commands));
        }
        return several.step;
    }

    private Step begin(String label, List<Command> commands) {
        var step = new Step(label, commands);
        execute(step);
        return step;
    }

    /** Goes on with the step that the last call for the same typing began, while nothing else was done since; else begins one. */
    Optional<Step> grow(Optional<Step> begun, String label, List<Command> commands) {
        if (commands.isEmpty()) {
            return begun;
        }
        if (begun.isPresent() && growing.equals(begun)) {
            begun.get().goOn(commands);
        } else {
            Optional<Step> fresh = take(label, commands);
            growing = fresh;
        }
        return growing;
    }

    /** Makes all steps that are taken in the course of this one step. */
    void together(String label, Runnable several) {
        gathering = Optional.of(new Gathering(label));
        try {
            several.run();
        } finally {
            gathering = Optional.empty();
            growing = Optional.empty();
        }
    }

    /** Takes the step back that is still growing, and forgets it. */
    void giveUp(Step step) {
        if (growing.filter(step::equals).isPresent()) {
            undo();
            commandList.remove(step);
            mostRecentCommand = null;
            step.dispose();
        }
    }

    boolean isGathering() {
        return gathering.isPresent();
    }

    @Override
    public void undo() {
        growing = Optional.empty();
        super.undo();
    }

    @Override
    public void redo() {
        growing = Optional.empty();
        super.redo();
    }

    @Override
    public void saveIsDone() {
        growing = Optional.empty();
        super.saveIsDone();
    }

    /** A step that fails is told to who asked for it; EMF would only write it into its log. */
    @Override
    protected void handleError(Exception fault) {
        throw fault instanceof RuntimeException unchecked ? unchecked : new IllegalStateException(fault);
    }
}
