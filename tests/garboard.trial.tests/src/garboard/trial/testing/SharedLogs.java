// SPDX-License-Identifier: EPL-2.0
package garboard.trial.testing;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;

/**
 * Logs that lie beside the repository, in {@code shared/logs} next to it, and what must come out of them. They are other people's data,
 * or large, and stay there; where they are absent the tests that need them are skipped and say so.
 */
public final class SharedLogs {

    private SharedLogs() {
    }

    /** {@return the file} The test is skipped where it is absent. */
    public static Path file(String name) {
        Optional<Path> folder = folder();
        assumeTrue(folder.isPresent(), "No shared/logs beside the repository: what " + name + " shows was not tested.");
        return folder.get().resolve(name);
    }

    /** {@return the name of the file in a folder that ends so} */
    public static String ending(String folder, String end) {
        try (Stream<Path> files = Files.list(file(folder))) {
            return folder + "/" + files.map(file -> file.getFileName().toString()).filter(name -> name.endsWith(end)).findFirst().orElseThrow();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private static Optional<Path> folder() {
        String named = System.getProperty("garboard.repository", "");
        for (Path at = Path.of(named).toAbsolutePath(); at != null; at = at.getParent()) {
            Path folder = at.resolve("shared").resolve("logs");
            if (Files.isDirectory(folder)) {
                return Optional.of(folder);
            }
        }
        return Optional.empty();
    }

    /** {@return the bytes of a file} */
    public static byte[] bytes(String name) {
        try {
            return Files.readAllBytes(file(name));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** {@return a JSON file} */
    public static JsonObject json(String name) {
        return JsonParser.parseString(new String(bytes(name), StandardCharsets.UTF_8)).getAsJsonObject();
    }

    /** {@return the objects of a file with one on each line} */
    public static List<JsonObject> jsonLines(String name) {
        return new String(bytes(name), StandardCharsets.UTF_8).lines().map(line -> JsonParser.parseString(line).getAsJsonObject()).toList();
    }
}
