// SPDX-License-Identifier: EPL-2.0
package garboard.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.MessageFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;

/** The texts of the window: each that the code asks for is there, in English and in German, and nothing is left over from before. */
class WindowTextsTest {

    /** A literal key: {@code texts.get("key"}; a key put together of pieces ends in a dot in the literal and is only held to exist as a beginning. */
    private static final Pattern ASKED = Pattern.compile("\\bget\\(\\s*\"([A-Za-z][\\w.-]*)\"(\\s*\\+)?");
    private static final Pattern PLACEHOLDER = Pattern.compile("\\{(\\d+)[^}]*}");

    @Test
    void everyTextIsThereInGermanWithTheSamePlaceholders() {
        var faults = new ArrayList<String>();
        for (Path english : messageFiles()) {
            Properties texts = read(english);
            Path german = english.resolveSibling("messages_de.properties");
            Properties translated = Files.exists(german) ? read(german) : new Properties();
            for (String key : new TreeSet<>(texts.stringPropertyNames())) {
                String there = translated.getProperty(key);
                if (there == null || there.isBlank()) {
                    faults.add(german + " lacks " + key);
                } else if (!placeholders(there).equals(placeholders(texts.getProperty(key)))) {
                    faults.add(german + ": the placeholders of " + key + " differ from the English text");
                }
            }
            translated.stringPropertyNames().stream().filter(key -> !texts.containsKey(key))
                .forEach(key -> faults.add(german + " has " + key + ", which the English file lacks"));
        }
        assertThat(faults).isEmpty();
    }

    @Test
    void everyTextCanBeFilledIn() {
        var faults = new ArrayList<String>();
        for (Path file : messageFiles()) {
            for (Path one : List.of(file, file.resolveSibling("messages_de.properties"))) {
                if (Files.exists(one)) {
                    read(one).forEach((key, text) -> {
                        if (!placeholders((String) text).isEmpty()) {
                            tryPattern(one, (String) key, (String) text, faults);
                        }
                    });
                }
            }
        }
        assertThat(faults).isEmpty();
    }

    /** A single apostrophe would swallow the placeholder behind it. What a text chooses by is a number. */
    private static void tryPattern(Path file, String key, String text, List<String> faults) {
        try {
            Object[] arguments = IntStream.range(0, 7).mapToObj(number -> text.contains("{" + number + ",") ? (Object) number : "A" + number).toArray();
            String filled = new MessageFormat(text).format(arguments);
            for (String number : placeholders(text)) {
                if (!filled.contains("A" + number) && !text.contains("{" + number + ",")) {
                    faults.add(file + ": " + key + " does not show {" + number + "}; an apostrophe must be doubled");
                }
            }
        } catch (IllegalArgumentException wrong) {
            faults.add(file + ": " + key + " is no pattern: " + wrong.getMessage());
        }
    }

    @Test
    void everyTextThatTheCodeAsksForIsThere() {
        var faults = new ArrayList<String>();
        for (Path english : messageFiles()) {
            Set<String> keys = read(english).stringPropertyNames();
            for (Path source : sourcesBeside(english)) {
                Matcher asked = ASKED.matcher(content(source));
                while (asked.find()) {
                    boolean piece = asked.group(2) != null;
                    String key = asked.group(1);
                    if (piece ? keys.stream().noneMatch(one -> one.startsWith(key)) : usesTexts(source) && !keys.contains(key)) {
                        faults.add(source + " asks for " + key + ", which " + english.getFileName() + " lacks");
                    }
                }
            }
        }
        assertThat(faults).isEmpty();
    }

    private static boolean usesTexts(Path source) {
        return content(source).contains("Texts");
    }

    private static Set<String> placeholders(String text) {
        var found = new TreeSet<String>();
        for (Matcher matcher = PLACEHOLDER.matcher(text); matcher.find();) {
            found.add(matcher.group(1));
        }
        return found;
    }

    private static List<Path> messageFiles() {
        try (Stream<Path> files = Files.walk(Repository.find().root().resolve("bundles"))) {
            List<Path> found = files.filter(file -> file.endsWith("messages.properties") && !file.toString().contains("target")
                && !file.toString().contains("/bin/")).sorted().toList();
            assertThat(found).isNotEmpty();
            return found;
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private static List<Path> sourcesBeside(Path messages) {
        try (Stream<Path> files = Files.list(messages.getParent())) {
            return files.filter(file -> file.toString().endsWith(".java")).sorted().toList();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private static Properties read(Path file) {
        var texts = new Properties();
        try {
            texts.load(new StringReader(content(file)));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
        return texts;
    }

    private static String content(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
