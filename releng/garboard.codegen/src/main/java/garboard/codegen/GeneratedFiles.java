// SPDX-License-Identifier: EPL-2.0
package garboard.codegen;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** Compares freshly generated files with those in the repository, and carries them over. */
final class GeneratedFiles {

    private final ModelProjects fresh;
    private final ModelProjects committed;

    GeneratedFiles(ModelProjects fresh, ModelProjects committed) {
        this.fresh = fresh;
        this.committed = committed;
    }

    /** One line for each file that differs, is missing or is one too many; empty when all is well. */
    List<String> differences() throws IOException {
        var found = new ArrayList<String>();
        for (Path file : all()) {
            var made = fresh.bundles().resolve(file);
            var kept = committed.bundles().resolve(file);
            if (!Files.exists(kept)) {
                found.add("missing:   " + file);
            } else if (!Files.exists(made)) {
                found.add("too many:  " + file);
            } else if (!sameContent(made, kept)) {
                found.add("different: " + file);
            }
        }
        return found;
    }

    /** Writes what differs and deletes what is too many; files that are right keep their time stamps. */
    void carryOver() throws IOException {
        for (Path file : all()) {
            var made = fresh.bundles().resolve(file);
            var kept = committed.bundles().resolve(file);
            if (!Files.exists(made)) {
                Files.delete(kept);
            } else if (!Files.exists(kept) || !sameContent(made, kept)) {
                Files.createDirectories(kept.getParent());
                Files.write(kept, Files.readAllBytes(made));
            }
        }
    }

    private Set<Path> all() throws IOException {
        var files = new TreeSet<Path>();
        for (Path place : ModelProjects.GENERATED) {
            for (Path root : List.of(fresh.bundles(), committed.bundles())) {
                if (Files.exists(root.resolve(place))) {
                    try (var found = Files.walk(root.resolve(place))) {
                        found.filter(Files::isRegularFile).map(root::relativize).forEach(files::add);
                    }
                }
            }
        }
        return files;
    }

    private static boolean sameContent(Path one, Path other) throws IOException {
        return Arrays.equals(Files.readAllBytes(one), Files.readAllBytes(other));
    }
}
