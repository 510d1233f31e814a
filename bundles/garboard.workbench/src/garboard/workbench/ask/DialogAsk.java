// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.ask;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;

import garboard.workbench.Desk;
import garboard.workbench.ask.FileQuestion.Kind;
import garboard.workbench.ask.Question.Answer;
import garboard.workbench.ask.Question.Tone;

/** Asks with the file chooser of the desktop and dialogs of our own. */
public final class DialogAsk implements Ask {

    private final Desk desk;
    private final Supplier<Shell> shell;

    /** @param shell the window over which to ask */
    public DialogAsk(Desk desk, Supplier<Shell> shell) {
        this.desk = desk;
        this.shell = shell;
    }

    @Override
    public Optional<Path> fileToOpen(FileQuestion question) {
        return Optional.ofNullable(chooser(question, SWT.OPEN).open()).map(Path::of);
    }

    @Override
    public List<Path> filesToOpen(FileQuestion question) {
        FileDialog chooser = chooser(question, SWT.OPEN | SWT.MULTI);
        return chooser.open() == null ? List.of()
            : Arrays.stream(chooser.getFileNames()).map(name -> Path.of(chooser.getFilterPath()).resolve(name)).toList();
    }

    @Override
    public Optional<Path> fileToWrite(FileQuestion question) {
        FileDialog chooser = chooser(question, SWT.SAVE);
        chooser.setOverwrite(true);
        question.name().ifPresent(chooser::setFileName);
        Optional<Path> chosen = Optional.ofNullable(chooser.open()).map(Path::of);
        Optional<Path> ended = chosen.map(file -> withEnding(file, question.kinds()));
        boolean agreed = ended.equals(chosen) || Files.notExists(ended.orElseThrow()) || mayReplace(ended.orElseThrow());
        return agreed ? ended : fileToWrite(question);
    }

    @Override
    public String choose(Question question) {
        return new QuestionDialog(shell.get(), desk, question).ask();
    }

    private boolean mayReplace(Path file) {
        var texts = desk.texts(DialogAsk.class);
        return "replace".equals(choose(Question.of("replace", Tone.WARNING, texts.get("replace.title", file.getFileName()),
            texts.get("replace.sentence", file.getParent()), Answer.losing("replace", texts.get("replace.replace")),
            new Answer("back", texts.get("replace.back")))));
    }

    private FileDialog chooser(FileQuestion question, int style) {
        var chooser = new FileDialog(shell.get(), style);
        chooser.setText(question.title());
        question.folder().filter(Files::isDirectory).map(Path::toString).ifPresent(chooser::setFilterPath);
        if (!question.kinds().isEmpty()) {
            chooser.setFilterNames(question.kinds().stream().map(Kind::label).toArray(String[]::new));
            chooser.setFilterExtensions(question.kinds().stream()
                .map(kind -> kind.endings().stream().map(ending -> "*" + ending).collect(Collectors.joining(";"))).toArray(String[]::new));
        }
        return chooser;
    }

    /** {@return the file with one of the endings of its kind} */
    private static Path withEnding(Path file, List<Kind> kinds) {
        if (kinds.isEmpty()) {
            return file;
        }
        String name = file.getFileName().toString();
        List<String> endings = kinds.getFirst().endings();
        return endings.stream().anyMatch(ending -> name.toLowerCase(Locale.ROOT).endsWith(ending)) ? file
            : file.resolveSibling(name + endings.getFirst());
    }
}
