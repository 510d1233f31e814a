// SPDX-License-Identifier: EPL-2.0
package garboard.house;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/**
 * The repository as files.
 *
 * @param root the folder with DEVELOPERS.md
 */
record Repository(Path root) {

    private static final String MARK = "DEVELOPERS.md";

    /** The repository that the build names, or else the one around the working directory. */
    static Repository find() {
        var named = System.getProperty("garboard.repository");
        var start = named == null ? Path.of("") : Path.of(named);
        for (Path folder = start.toAbsolutePath(); folder != null; folder = folder.getParent()) {
            if (Files.exists(folder.resolve(MARK)) && Files.isDirectory(folder.resolve("bundles"))) {
                return new Repository(folder);
            }
        }
        throw new IllegalStateException("No folder with " + MARK + " and bundles at or above " + start.toAbsolutePath());
    }

    List<Path> bundles() {
        return projects("bundles");
    }

    List<Path> tests() {
        return projects("tests");
    }

    private List<Path> projects(String parent) {
        try (Stream<Path> found = Files.list(root.resolve(parent))) {
            return found.filter(folder -> Files.exists(folder.resolve("META-INF/MANIFEST.MF"))).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Every Java file that a person wrote: those of bundles and tests, and the build's own; src-gen is the generator's. */
    List<Path> writtenSources() {
        return Stream.of("bundles", "tests", "releng").map(root::resolve).flatMap(folder -> files(folder).stream())
                .filter(file -> file.toString().endsWith(".java")).filter(file -> !in(file, "src-gen")).toList();
    }

    /** All files below a folder, without build results. */
    static List<Path> files(Path folder) {
        try (Stream<Path> found = Files.walk(folder)) {
            return found.filter(Files::isRegularFile)
                    .filter(file -> !in(folder.relativize(file), "target") && !in(folder.relativize(file), "bin")
                            && !in(folder.relativize(file), ".cache"))
                    .sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    String shortName(Path file) {
        return root.relativize(file).toString();
    }

    static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static boolean in(Path file, String folder) {
        for (Path part : file) {
            if (part.toString().equals(folder)) {
                return true;
            }
        }
        return false;
    }
}
