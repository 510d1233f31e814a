// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.start;

import java.util.List;

import jakarta.inject.Inject;
import jakarta.inject.Named;

import org.eclipse.e4.core.di.annotations.Creatable;
import org.eclipse.e4.ui.services.IServiceConstants;
import org.eclipse.swt.widgets.Shell;

import garboard.examples.Example;
import garboard.model.io.RecordReadException;
import garboard.session.files.Filing;
import garboard.session.files.RecentRecord;
import garboard.session.journal.Journal;
import garboard.workbench.Desk;
import garboard.workbench.ask.Ask;
import garboard.workbench.ask.FileQuestion;
import garboard.workbench.ask.FileQuestion.Kind;
import garboard.workbench.ask.Question;
import garboard.workbench.ask.Question.Answer;
import garboard.workbench.ask.Question.Tone;
import garboard.workbench.shell.LeftBehind;
import garboard.workbench.shell.Stage;

/** What can be done from the start page. */
@Creatable
public final class StartActions {

    @Inject
    private Desk desk;
    @Inject
    private Filing filing;
    @Inject
    private Journal journal;
    @Inject
    private Ask ask;
    @Inject
    private Stage stage;
    @Inject
    private ExampleChoice examples;
    @Inject
    private LeftBehind leftBehind;
    @Inject
    @Named(IServiceConstants.ACTIVE_SHELL)
    private Shell shell;
    private Runnable changed = () -> { };

    /** Calls this when what can be done is another. */
    void onChange(Runnable listener) {
        changed = listener;
    }

    void back() {
        stage.showRecord();
    }

    void create() {
        filing.create();
    }

    void open() {
        filing.open();
    }

    void open(Example example) {
        examples.open(example);
    }

    void openWorkbook() {
        var texts = desk.texts(StartActions.class);
        ask.fileToOpen(FileQuestion.toOpen("openWorkbook", texts.get("begin.workbook.choose"), filing.folder(),
            new Kind(texts.get("begin.workbook.kind"), List.of(".xlsx")))).ifPresent(filing::open);
    }

    List<RecentRecord> recent() {
        return filing.recent().list();
    }

    void openRecent(RecentRecord one) {
        filing.open(one.file());
    }

    void forget(RecentRecord one) {
        filing.recent().remove(one.file());
        changed.run();
    }

    void cautions() {
        new CautionsDialog(shell, desk).open();
    }

    void takeUp(LeftBehind.Found found) {
        try {
            if (filing.takeUp(found.leftover(), journal)) {
                leftBehind.decided(found);
                changed.run();
            }
        } catch (RecordReadException damaged) {
            notice("leftUnreadable", "left.unreadable.title", List.of(damaged.getMessage()));
        }
    }

    void showDifferences(LeftBehind.Found found, DifferenceWords words) {
        notice("differences", "left.all.title", found.comparison().orElseThrow().differences().stream().map(words::line).toList());
    }

    private void notice(String id, String title, List<String> lines) {
        var texts = desk.texts(StartActions.class);
        ask.choose(Question.of(id, Tone.NOTE, texts.get(title), texts.get(title + ".sentence"), new Answer("close", texts.get("close"))).with(lines));
    }

    void later(LeftBehind.Found found) {
        leftBehind.decided(found);
        changed.run();
    }

    void discard(LeftBehind.Found found) {
        var texts = desk.texts(StartActions.class);
        String chosen = ask.choose(Question.of("discardLeft", Tone.WARNING, texts.get("left.discard.title"), texts.get("left.discard.sentence"),
            Answer.losing("discard", texts.get("left.discard.do")), new Answer("keep", texts.get("left.discard.keep"))));
        if ("discard".equals(chosen)) {
            found.leftover().discard();
            leftBehind.decided(found);
            changed.run();
        }
    }
}
