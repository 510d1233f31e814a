// SPDX-License-Identifier: EPL-2.0
package garboard.session;

import java.util.List;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.CompoundCommand;

/** What undo takes back at once. Its commands are prepared when those before them are done, and it can grow. */
final class Step extends CompoundCommand {

    private final List<Command> first;

    /** @param label what the step is called in "Undo ..." */
    Step(String label, List<Command> first) {
        super(label);
        this.first = List.copyOf(first);
    }

    @Override
    protected boolean prepare() {
        return true;
    }

    @Override
    public void execute() {
        goOn(first);
    }

    /**
     * Does more in the same step: all of it or nothing.
     *
     * @throws IllegalArgumentException when the record cannot take it, which is a fault of the one who asks
     */
    void goOn(List<Command> commands) {
        int done = commandList.size();
        for (Command command : commands) {
            if (!appendAndExecute(command)) {
                while (commandList.size() > done) {
                    Command last = commandList.removeLast();
                    last.undo();
                    last.dispose();
                }
                throw new IllegalArgumentException("The record cannot take \"" + label + "\": " + command);
            }
        }
    }
}
