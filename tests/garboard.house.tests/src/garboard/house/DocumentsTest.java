// SPDX-License-Identifier: EPL-2.0
package garboard.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The documents keep up with the folders. */
class DocumentsTest {

    private static final Repository REPOSITORY = Repository.find();

    @Test
    void developersPageNamesEveryBundle() {
        var page = Repository.text(REPOSITORY.root().resolve("DEVELOPERS.md"));
        assertThat(REPOSITORY.bundles()).extracting(bundle -> bundle.getFileName().toString())
                .allSatisfy(name -> assertThat(page).as("DEVELOPERS.md").contains("`" + name + "`"));
    }

    @Test
    void developersPageShowsTheArrowsThatAreHeld() {
        var page = Repository.text(REPOSITORY.root().resolve("DEVELOPERS.md"));
        Arrows.TABLE.forEach((bundle, sight) -> {
            var row = page.lines().filter(line -> line.startsWith("| `" + bundle + "` |")).toList();
            assertThat(row).as("rows of DEVELOPERS.md that begin with %s", bundle).hasSize(1);
            var shown = row.getFirst().split("\\|")[2];
            assertThat(shown.replaceAll("[`\\s]", "").split(",")).as("what DEVELOPERS.md says %s may see", bundle)
                    .containsExactlyInAnyOrderElementsOf(sight.own().isEmpty() ? java.util.List.of("-") : sight.own());
        });
    }

    @Test
    void topLevelHoldsNothingElse() throws IOException {
        try (var found = Files.list(REPOSITORY.root())) {
            // a reader who tried the README's commands here has reports and records beside the sources
            assertThat(found.map(Path::getFileName).map(Path::toString).filter(name -> !name.startsWith(".")).filter(name -> !isAReadersOwn(name)))
                    .containsExactlyInAnyOrder("README.md", "DEVELOPERS.md", "pom.xml", "bundles", "features", "releng", "tests");
        }
    }

    private static boolean isAReadersOwn(String name) {
        return name.endsWith(".xlsx") || name.endsWith(".garboard") || name.endsWith(".bak");
    }
}
