// SPDX-License-Identifier: EPL-2.0
package garboard.session.handover;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Properties;

import garboard.report.UsualUpkeep;

/** What the usual tasks of the upkeep are called in one language, English where it is not translated. */
public final class UsualWords {

    private final Properties words;

    private UsualWords(Properties words) {
        this.words = words;
    }

    /** {@return the words in a language} */
    public static UsualWords in(Locale locale) {
        var words = new Properties();
        try (var in = UsualWords.class.getResourceAsStream("usual_" + locale.getLanguage() + ".properties")) {
            if (in != null) {
                words.load(new InputStreamReader(in, StandardCharsets.UTF_8));
            }
        } catch (IOException broken) {
            throw new UncheckedIOException("The words of the usual tasks cannot be read from the bundle", broken);
        }
        return new UsualWords(words);
    }

    /** {@return what a task is called} */
    public String of(UsualUpkeep.Task task) {
        return words.getProperty(task.id(), task.words());
    }
}
