// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.scenarios;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ConcurrentLinkedDeque;
import java.util.concurrent.CopyOnWriteArrayList;

import garboard.workbench.ask.Ask;
import garboard.workbench.ask.FileQuestion;
import garboard.workbench.ask.Question;

/**
 * Answers in the person's place where the desktop's own dialogs would come up, which no hand of a test can reach: which file. Questions
 * with words of the program go on to its own dialogs, where the hand answers them.
 */
public final class Answers implements Ask {

    private final Ask dialogs;
    private final Deque<Path> files = new ConcurrentLinkedDeque<>();
    private final List<String> asked = new CopyOnWriteArrayList<>();
    private volatile boolean discard;

    private Answers(Ask dialogs) {
        this.dialogs = dialogs;
    }

    /** Takes the place of the dialogs in a window. */
    static Answers instead(WindowUnderTest window) {
        return window.onWindow(() -> {
            var answers = new Answers(window.context().get(Ask.class));
            window.context().set(Ask.class, answers);
            return answers;
        });
    }

    /** The next question for a file is answered with this one. */
    public void nextFile(Path file) {
        files.add(file);
    }

    /** {@return the ids of all that was asked so far} */
    public List<String> asked() {
        return List.copyOf(asked);
    }

    /** Whether from now on whatever would be lost may be lost: a scenario is over. */
    void discardWhenAsked(boolean may) {
        discard = may;
        files.clear();
    }

    @Override
    public Optional<Path> fileToOpen(FileQuestion question) {
        asked.add(question.id());
        return Optional.ofNullable(files.poll());
    }

    @Override
    public List<Path> filesToOpen(FileQuestion question) {
        asked.add(question.id());
        var all = new ArrayList<Path>();
        for (Path next = files.poll(); next != null; next = files.poll()) {
            all.add(next);
        }
        return all;
    }

    @Override
    public Optional<Path> fileToWrite(FileQuestion question) {
        asked.add(question.id());
        return Optional.ofNullable(files.poll());
    }

    @Override
    public String choose(Question question) {
        asked.add(question.id());
        if (discard) {
            return question.answers().stream().filter(Question.Answer::loses).findFirst().orElse(question.answers().getLast()).id();
        }
        return dialogs.choose(question);
    }
}
