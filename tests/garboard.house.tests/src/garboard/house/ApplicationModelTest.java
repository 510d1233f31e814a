// SPDX-License-Identifier: EPL-2.0
package garboard.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Properties;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The model of the window names classes, pictures, commands and texts; e4 would pass over a wrong name without a word. */
class ApplicationModelTest {

    private static final Path BUNDLE = Repository.find().root().resolve("bundles/garboard.workbench");
    private static String model;

    @BeforeAll
    static void read() throws IOException {
        model = Files.readString(BUNDLE.resolve("Application.e4xmi"));
    }

    @Test
    void everyClassOfOursIsThere() {
        List<String> classes = all("bundleclass://garboard\\.workbench/([\\w.]+)");
        assertThat(classes).isNotEmpty();
        assertThat(classes).allSatisfy(name -> assertThat(BUNDLE.resolve("src/" + name.replace('.', '/') + ".java")).exists());
    }

    @Test
    void everyPictureIsThere() {
        assertThat(all("platform:/plugin/garboard\\.workbench/([\\w./-]+)")).isNotEmpty()
            .allSatisfy(file -> assertThat(BUNDLE.resolve(file)).exists());
    }

    @Test
    void everyCommandThatIsUsedIsDeclaredAndHandled() {
        List<String> declared = all("<commands [^>]*elementId=\"(garboard\\.command\\.\\w+)\"");
        List<String> handled = all("<handlers [^>]*command=\"(garboard\\.command\\.\\w+)\"");
        assertThat(new TreeSet<>(all(" command=\"(garboard\\.command\\.\\w+)\""))).isEqualTo(new TreeSet<>(declared));
        assertThat(new TreeSet<>(handled)).isEqualTo(new TreeSet<>(declared));
    }

    @Test
    void everyTextIsThereInBothLanguages() throws IOException {
        for (String file : List.of("bundle.properties", "bundle_de.properties")) {
            Properties texts = new Properties();
            try (Reader in = Files.newBufferedReader(BUNDLE.resolve("OSGI-INF/l10n/" + file), StandardCharsets.UTF_8)) {
                texts.load(in);
            }
            assertThat(texts.stringPropertyNames()).as(file).containsAll(all("\"%([\\w.]+)\""));
        }
    }

    private static List<String> all(String pattern) {
        var found = new ArrayList<String>();
        for (Matcher matcher = Pattern.compile(pattern).matcher(model); matcher.find();) {
            found.add(matcher.group(1));
        }
        return found;
    }
}
