// SPDX-License-Identifier: EPL-2.0
package garboard.session.files;

import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;

import garboard.session.OpenRecord;

/** A person whose answers are laid down beforehand, and who remembers what was asked. A question without an answer laid down fails. */
final class Scripted implements FilingQuestions {

    final List<String> asked = new ArrayList<>();
    final List<UnreadableException.Fault> unreadable = new ArrayList<>();
    final List<UnwritableException.Fault> unwritable = new ArrayList<>();
    final List<String> notes = new ArrayList<>();
    private final Deque<Object> answers = new ArrayDeque<>();

    Scripted answers(Object... laidDown) {
        answers.addAll(List.of(laidDown));
        return this;
    }

    private <T> T answer(String question, Class<T> kind) {
        asked.add(question);
        if (answers.isEmpty()) {
            throw new AssertionError("Nobody expected to be asked: " + question);
        }
        return kind.cast(answers.removeFirst());
    }

    private Optional<Path> file(String question) {
        return answer(question, Object.class) instanceof Path path ? Optional.of(path) : Optional.empty();
    }

    @Override
    public Optional<Path> fileToOpen(Optional<Path> folder) {
        return file("open");
    }

    @Override
    public Optional<Path> fileToSave(OpenRecord record, Optional<Path> folder) {
        return file("saveAs");
    }

    @Override
    public Leave unsaved(OpenRecord record) {
        return answer("unsaved", Leave.class);
    }

    @Override
    public Clash changedMeanwhile(Path file) {
        return answer("changed", Clash.class);
    }

    @Override
    public Clash goneMeanwhile(Path file) {
        return answer("gone", Clash.class);
    }

    @Override
    public boolean mayReplace(Path file) {
        return answer("replace", Boolean.class);
    }

    @Override
    public void unreadable(UnreadableException why) {
        unreadable.add(why.fault());
    }

    @Override
    public boolean unwritable(UnwritableException why) {
        unwritable.add(why.fault());
        return answer("unwritable", Boolean.class);
    }

    @Override
    public void notes(Path file, List<String> lines) {
        notes.addAll(lines);
    }
}
