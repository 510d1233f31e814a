// SPDX-License-Identifier: EPL-2.0
package garboard.house;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.jar.Manifest;
import java.util.stream.Stream;

/** What a bundle's manifest says about its neighbours. */
final class BundleManifest {

    private final Manifest manifest;

    BundleManifest(Path project) {
        try (var in = Files.newInputStream(project.resolve("META-INF/MANIFEST.MF"))) {
            manifest = new Manifest(in);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    String symbolicName() {
        return names("Bundle-SymbolicName").getFirst();
    }

    List<String> requiredBundles() {
        return names("Require-Bundle");
    }

    List<String> importedPackages() {
        return names("Import-Package");
    }

    List<String> exportedPackages() {
        return names("Export-Package");
    }

    List<String> fragmentHost() {
        return names("Fragment-Host");
    }

    String executionEnvironment() {
        return header("Bundle-RequiredExecutionEnvironment");
    }

    private String header(String name) {
        var value = manifest.getMainAttributes().getValue(name);
        return value == null ? "" : value;
    }

    /** The names in a header, without their attributes and directives; commas inside quotes do not separate. */
    private List<String> names(String header) {
        return Stream.of(header(header).split(",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)"))
                .map(clause -> clause.split(";")[0].strip()).filter(name -> !name.isEmpty()).toList();
    }
}
