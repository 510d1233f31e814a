// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.shell;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Supplier;

import org.eclipse.core.runtime.Platform;
import org.eclipse.swt.program.Program;

import garboard.workbench.Desk;
import garboard.workbench.ask.Ask;
import garboard.workbench.ask.Question;
import garboard.workbench.ask.Question.Answer;
import garboard.workbench.ask.Question.Tone;

/** The file in which the program notes what went wrong. */
public final class LogFile {

    private final Desk desk;
    private final Supplier<Ask> ask;

    LogFile(Desk desk, Supplier<Ask> ask) {
        this.desk = desk;
        this.ask = ask;
    }

    /** Opens it with the program that the desktop has for it; else tells where it is. */
    public void show() {
        var texts = desk.texts(LogFile.class);
        Path file = Platform.getLogFileLocation().toFile().toPath();
        boolean there = Files.exists(file);
        if (!there || !Program.launch(file.toString())) {
            ask.get().choose(Question.of("log", Tone.NOTE, texts.get("log.title"), texts.get(there ? "log.sentence" : "log.empty"),
                new Answer("close", texts.get("close"))).with(there ? List.of(file.toString()) : List.of()));
        }
    }
}
