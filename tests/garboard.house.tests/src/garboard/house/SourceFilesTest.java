// SPDX-License-Identifier: EPL-2.0
package garboard.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What holds for every file of source. */
class SourceFilesTest {

    private static final Repository REPOSITORY = Repository.find();
    private static final String HEADER = "// SPDX-License-Identifier: EPL-2.0\n";
    private static final int MOST_LINES = 400;
    private static final Pattern STANDARD_STREAMS = Pattern.compile("\\bSystem\\s*\\.\\s*(out|err)\\b|\\.printStackTrace\\(\\)");

    @Test
    void findsSources() {
        assertThat(REPOSITORY.writtenSources()).as("written sources, this test among them")
                .anyMatch(file -> file.endsWith("garboard/house/SourceFilesTest.java"))
                .anyMatch(file -> file.startsWith(REPOSITORY.root().resolve("bundles")));
    }

    @Test
    void everyJavaFileBeginsWithItsLicence() {
        assertThat(names(REPOSITORY.writtenSources().stream(), text -> !text.startsWith(HEADER)))
                .as("Java files that do not begin with %s", HEADER).isEmpty();
    }

    @Test
    void noFileIsLongerThanAReaderCanHold() {
        assertThat(names(REPOSITORY.writtenSources().stream(), text -> text.lines().count() > MOST_LINES))
                .as("Java files above %d lines", MOST_LINES).isEmpty();
    }

    @Test
    void onlyTheConsoleWritesToStandardStreams() {
        assertThat(names(javaFilesOutside("garboard.console"), text -> STANDARD_STREAMS.matcher(text).find()))
                .as("files with System.out, System.err or printStackTrace()").isEmpty();
    }

    @Test
    void onlyTheWorkbookKnowsPoi() {
        assertThat(names(filesOutside("garboard.report.excel"), text -> text.contains("org.apache.poi")))
                .as("files that mention org.apache.poi").isEmpty();
    }

    private static Stream<Path> filesOutside(String bundle) {
        return REPOSITORY.bundles().stream().filter(folder -> !folder.endsWith(bundle))
                .flatMap(folder -> Repository.files(folder).stream())
                .filter(file -> file.toString().matches(".*\\.(java|xml|MF|properties|exsd|ecore|genmodel)"));
    }

    private static Stream<Path> javaFilesOutside(String bundle) {
        return filesOutside(bundle).filter(file -> file.toString().endsWith(".java"));
    }

    private static Stream<String> names(Stream<Path> files, Predicate<String> wrong) {
        return files.filter(file -> wrong.test(Repository.text(file))).map(REPOSITORY::shortName);
    }
}
