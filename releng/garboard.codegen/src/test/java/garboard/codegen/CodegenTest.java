// SPDX-License-Identifier: EPL-2.0
package garboard.codegen;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The generator and its comparison, tried on a repository with a stand-in model. */
class CodegenTest {

    private static final Path BILGE = Path.of("garboard.model/src-gen/garboard/model/Bilge.java");

    private static Path generated;

    @TempDir
    private Path repository;

    @TempDir
    private Path scratch;

    @BeforeAll
    static void generateOnce(@TempDir Path repository, @TempDir Path scratch) throws IOException, CodegenException {
        var model = Files.createDirectories(repository.resolve("bundles/garboard.model/model"));
        for (String name : new String[] {"garboard.ecore", "garboard.genmodel"}) {
            try (InputStream in = CodegenTest.class.getResourceAsStream("/stand-in/" + name)) {
                Files.copy(in, model.resolve(name));
            }
        }
        Codegen.main(new String[] {"regenerate", repository.toString(), scratch.toString()});
        generated = repository;
    }

    @BeforeEach
    void copyWhatWasGenerated() throws IOException {
        try (var files = Files.walk(generated)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                var copy = repository.resolve(generated.relativize(file));
                Files.createDirectories(copy.getParent());
                Files.copy(file, copy);
            }
        }
    }

    @Test
    void writesInterfacesImplementationsAndItemProviders() {
        assertThat(bundles().resolve(BILGE)).content().contains("EList<Pump> getPumps();", "@generated").doesNotContain("@generated NOT");
        assertThat(bundles().resolve("garboard.model/src-gen/garboard/model/impl/BilgeImpl.java")).exists();
        assertThat(bundles().resolve("garboard.model/src-gen/garboard/model/util/StandInSwitch.java")).exists();
        assertThat(bundles().resolve("garboard.model.edit/src-gen/garboard/model/provider/BilgeItemProvider.java")).exists();
        assertThat(bundles().resolve("garboard.model.edit/plugin.properties")).content().contains("_UI_Bilge_depth_feature");
    }

    @Test
    void acceptsWhatItHasJustGenerated() throws IOException, CodegenException {
        run("check");
    }

    @Test
    void refusesAnEditedFile() throws IOException {
        var file = bundles().resolve(BILGE);
        Files.writeString(file, Files.readString(file).replace("getDepth", "getDraught"));
        assertThatThrownBy(() -> run("check")).isInstanceOf(CodegenException.class)
                .hasMessageContaining("releng/regenerate").hasMessageContaining("different: " + BILGE);
    }

    @Test
    void refusesAMissingFile() throws IOException {
        Files.delete(bundles().resolve(BILGE));
        assertThatThrownBy(() -> run("check")).isInstanceOf(CodegenException.class).hasMessageContaining("missing:   " + BILGE);
    }

    @Test
    void refusesAFileThatTheModelDoesNotGive() throws IOException {
        var extra = BILGE.resolveSibling("Limber.java");
        Files.writeString(bundles().resolve(extra), "package garboard.model;\n");
        assertThatThrownBy(() -> run("check")).isInstanceOf(CodegenException.class).hasMessageContaining("too many:  " + extra);
    }

    @Test
    void refusesCodeOfAnOlderModel() throws IOException {
        var ecore = bundles().resolve("garboard.model/model/garboard.ecore");
        Files.writeString(ecore, Files.readString(ecore).replace("name=\"depth\"", "name=\"draught\""));
        assertThatThrownBy(() -> run("check")).isInstanceOf(CodegenException.class).hasMessageContaining("different: " + BILGE);
    }

    @Test
    void regeneratingRepairsAndLeavesTheRestUntouched() throws IOException, CodegenException {
        var untouched = bundles().resolve("garboard.model/src-gen/garboard/model/Pump.java");
        var before = Files.getLastModifiedTime(untouched);
        Files.delete(bundles().resolve(BILGE));
        Files.writeString(bundles().resolve(BILGE.resolveSibling("Limber.java")), "package garboard.model;\n");
        run("regenerate");
        run("check");
        assertThat(Files.getLastModifiedTime(untouched)).isEqualTo(before);
    }

    @Test
    void toleratesARepositoryWithoutAModel(@TempDir Path empty) throws IOException, CodegenException {
        Codegen.main(new String[] {"check", empty.toString(), scratch.toString()});
    }

    private Path bundles() {
        return repository.resolve("bundles");
    }

    private void run(String what) throws IOException, CodegenException {
        Codegen.main(new String[] {what, repository.toString(), scratch.toString()});
    }
}
