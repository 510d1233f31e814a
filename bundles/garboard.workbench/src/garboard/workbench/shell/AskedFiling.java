// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.shell;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;

import garboard.model.io.RecordFile;
import garboard.session.OpenRecord;
import garboard.session.files.FilingQuestions;
import garboard.session.files.RecordName;
import garboard.session.files.UnreadableException;
import garboard.session.files.UnwritableException;
import garboard.workbench.Desk;
import garboard.workbench.ask.Ask;
import garboard.workbench.ask.FileQuestion;
import garboard.workbench.ask.FileQuestion.Kind;
import garboard.workbench.ask.Question;
import garboard.workbench.ask.Question.Answer;
import garboard.workbench.ask.Question.Tone;
import garboard.workbench.text.Texts;

/** Puts what is to be asked about files into words. */
final class AskedFiling implements FilingQuestions {

    private static final String WORKBOOK = ".xlsx";

    private final Supplier<Ask> ask;
    private final Texts.Of texts;

    AskedFiling(Desk desk, Supplier<Ask> ask) {
        this.ask = ask;
        this.texts = desk.texts(AskedFiling.class);
    }

    @Override
    public Optional<Path> fileToOpen(Optional<Path> folder) {
        return ask.get().fileToOpen(FileQuestion.toOpen("open", texts.get("open.title"), folder,
            new Kind(texts.get("kind.all"), List.of(RecordFile.ENDING, WORKBOOK)), record(),
            new Kind(texts.get("kind.workbook"), List.of(WORKBOOK))));
    }

    @Override
    public Optional<Path> fileToSave(OpenRecord record, Optional<Path> folder) {
        String name = record.file().map(file -> file.getFileName().toString())
            .orElseGet(() -> RecordName.proposed(record.record(), texts.get("record.new")));
        return ask.get().fileToWrite(FileQuestion.toWrite("saveAs", texts.get("saveAs.title"), folder, name, record()));
    }

    private Kind record() {
        return new Kind(texts.get("kind.record"), List.of(RecordFile.ENDING));
    }

    @Override
    public Leave unsaved(OpenRecord record) {
        String name = RecordName.of(record).orElse(texts.get("record.new"));
        return Leave.valueOf(upper(ask.get().choose(Question.of("unsaved", Tone.QUESTION, texts.get("unsaved.title", name), texts.get("unsaved.sentence"),
            new Answer("save", texts.get("unsaved.save")), Answer.losing("discard", texts.get("unsaved.discard")),
            new Answer("stay", texts.get("unsaved.stay"))))));
    }

    @Override
    public Clash changedMeanwhile(Path file) {
        return clash("changedMeanwhile", texts.get("changed.title", file.getFileName()), texts.get("changed.sentence", file.getParent()), true);
    }

    @Override
    public Clash goneMeanwhile(Path file) {
        return clash("goneMeanwhile", texts.get("gone.title", file.getFileName()), texts.get("gone.sentence", file.getParent()), false);
    }

    private Clash clash(String id, String title, String sentence, boolean loses) {
        String chosen = ask.get().choose(Question.of(id, Tone.WARNING, title, sentence,
            new Answer("other_name", texts.get("clash.otherName")), new Answer("replace", texts.get(loses ? "clash.replace" : "clash.again"), loses),
            new Answer("stay", texts.get("clash.stay"))));
        return Clash.valueOf(upper(chosen));
    }

    @Override
    public boolean mayReplace(Path file) {
        return "replace".equals(ask.get().choose(Question.of("replace", Tone.WARNING, texts.get("replace.title", file.getFileName()),
            texts.get("replace.sentence", file.getParent()), Answer.losing("replace", texts.get("clash.replace")),
            new Answer("stay", texts.get("clash.stay")))));
    }

    @Override
    public void unreadable(UnreadableException why) {
        String sentence = texts.get("unreadable." + why.fault().name().toLowerCase(Locale.ROOT), parent(why.file()));
        ask.get().choose(Question.of("unreadable", Tone.FAULT, texts.get("unreadable.title", name(why.file())), sentence,
            new Answer("close", texts.get("close"))).with(why.details()));
    }

    @Override
    public boolean unwritable(UnwritableException why) {
        String sentence = texts.get("unwritable." + why.fault().name().toLowerCase(Locale.ROOT), parent(why.file()));
        boolean explained = why.fault() == UnwritableException.Fault.CONTENT || why.fault() == UnwritableException.Fault.OTHER;
        return "other_name".equals(ask.get().choose(Question.of("unwritable", Tone.FAULT, texts.get("unwritable.title", name(why.file())), sentence,
            new Answer("other_name", texts.get("clash.otherName")), new Answer("stay", texts.get("clash.stay")))
            .with(explained ? List.of(why.getMessage()) : List.of())));
    }

    @Override
    public void notes(Path file, List<String> lines) {
        ask.get().choose(Question.of("notes", Tone.NOTE, texts.get("notes.title", name(file)), texts.get("notes.sentence"),
            new Answer("close", texts.get("close"))).with(lines));
    }

    private static String name(Path file) {
        return String.valueOf(file.getFileName() == null ? file : file.getFileName());
    }

    private static String parent(Path file) {
        return String.valueOf(file.getParent() == null ? file : file.getParent());
    }

    private static String upper(String answer) {
        return answer.toUpperCase(Locale.ROOT);
    }
}
