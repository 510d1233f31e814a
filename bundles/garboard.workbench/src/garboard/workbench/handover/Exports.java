// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.handover;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import jakarta.annotation.PreDestroy;
import jakarta.inject.Inject;
import jakarta.inject.Singleton;

import org.eclipse.e4.core.di.annotations.Creatable;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.osgi.framework.FrameworkUtil;

import garboard.model.io.RecordFile;
import garboard.session.OpenRecord;
import garboard.session.files.RecordName;
import garboard.session.handover.ReportSource;
import garboard.workbench.Desk;
import garboard.workbench.ask.Ask;
import garboard.workbench.ask.FileQuestion;
import garboard.workbench.ask.Question;
import garboard.workbench.ask.Question.Answer;
import garboard.workbench.ask.Question.Tone;
import garboard.workbench.shell.Notices;
import garboard.workbench.shell.ProgramVersion;

/** Writes workbooks of the open record while the person works on: asks where, and shows how far each is. */
@Creatable
@Singleton
public final class Exports {

    private static final long PATIENCE_MILLIS = 2000;

    private final Notices notices;
    private final List<Writing> running = new ArrayList<>();
    private Optional<Path> folder = Optional.empty();

    @Inject
    Exports(Notices notices) {
        this.notices = notices;
    }

    /** Asks for a file and writes the report of the open record there. */
    public void report(Desk desk, Ask ask, Shell shell) {
        write(Workbook.REPORT, desk, ask, shell);
    }

    /** Asks for a file and writes the form to fill in on board there. */
    public void form(Desk desk, Ask ask, Shell shell) {
        write(Workbook.FORM, desk, ask, shell);
    }

    private void write(Workbook workbook, Desk desk, Ask ask, Shell shell) {
        Optional<OpenRecord> open = desk.open();
        Optional<Path> target = open.flatMap(record -> ask.fileToWrite(question(workbook, record, desk)));
        if (target.isEmpty() || open.isEmpty()) {
            return;
        }
        Path file = target.get().toAbsolutePath();
        if (running.stream().anyMatch(writing -> writing.target().equals(file))) {
            var texts = desk.texts(Exports.class);
            ask.choose(Question.of("beingWritten", Tone.NOTE, texts.get("export.beingWritten.title", file.getFileName()),
                texts.get("export.beingWritten.sentence"), new Answer("close", texts.get("export.close"))));
            return;
        }
        begin(workbook, open.get(), file, desk, shell);
    }

    private FileQuestion question(Workbook workbook, OpenRecord record, Desk desk) {
        var texts = desk.texts(Exports.class);
        return FileQuestion.toWrite(workbook.id(), texts.get("export." + workbook.id() + ".title"), folder.or(() -> record.file().map(Path::getParent)),
            workbook.fileName(stem(record, desk)), new FileQuestion.Kind(texts.get("export.kind"), List.of(Workbook.ENDING)));
    }

    private static String stem(OpenRecord record, Desk desk) {
        String name = record.file().map(file -> file.getFileName().toString())
            .orElseGet(() -> RecordName.proposed(record.record(), desk.texts(Exports.class).get("export.unnamed")));
        int dot = name.lastIndexOf('.');
        return dot > 0 ? name.substring(0, dot) : name;
    }

    private void begin(Workbook workbook, OpenRecord record, Path file, Desk desk, Shell shell) {
        String version = ProgramVersion.of(FrameworkUtil.getBundle(Exports.class));
        var source = ReportSource.of(record, stem(record, desk) + RecordFile.ENDING, desk.settings().units(), desk.settings().paper(), desk.clock(),
            version);
        Display display = shell.getDisplay();
        var dialog = new ExportDialog(window(shell), desk, workbook, file);
        var writing = new Writing(workbook, source, file, news -> {
            if (!display.isDisposed()) {
                display.asyncExec(() -> hear(news, file, record, desk, dialog));
            }
        });
        running.add(writing);
        dialog.show(writing);
        writing.start();
    }

    /** The window itself, and not a dialog that may go while this one stays. */
    private static Shell window(Shell shell) {
        return shell.getParent() instanceof Shell above ? window(above) : shell;
    }

    private void hear(Writing.News news, Path file, OpenRecord record, Desk desk, ExportDialog dialog) {
        if (!(news instanceof Writing.News.At)) {
            running.removeIf(writing -> writing.target().equals(file));
        }
        if (news instanceof Writing.News.Written) {
            folder = Optional.ofNullable(file.getParent());
        }
        if (news instanceof Writing.News.Written && dialog.workbook() == Workbook.REPORT && desk.open().filter(record::equals).isPresent()) {
            desk.reportWritten(file);
        }
        if (news instanceof Writing.News.Stopped) {
            notices.say(desk.texts(Exports.class).get("export.stopped", file.getFileName()));
        }
        dialog.hear(news);
    }

    /** The program ends: half a file must not stay behind. */
    @PreDestroy
    void end() {
        List<Writing> last = List.copyOf(running);
        last.forEach(Writing::cancel);
        try {
            for (Writing writing : last) {
                writing.join(PATIENCE_MILLIS);
            }
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }
}
