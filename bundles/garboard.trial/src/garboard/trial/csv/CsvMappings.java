// SPDX-License-Identifier: EPL-2.0
package garboard.trial.csv;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;

/**
 * The mappings that a person has settled, a JSON file each in a folder, found again by the row of headings.
 *
 * @param folder made when something is remembered
 */
public record CsvMappings(Path folder) {

    private static final String ENDING = ".columns.json";
    private static final int NAME_BYTES = 8;

    /** Keeps a mapping, in place of an earlier one for the same headings. */
    public void remember(CsvMapping mapping) throws IOException {
        Files.createDirectories(folder);
        Files.writeString(file(mapping.headings()), CsvMappingJson.write(mapping), StandardCharsets.UTF_8);
    }

    /**
     * {@return the mapping for a row of headings, where one is remembered} One whose file cannot be read any more is as if forgotten.
     */
    public Optional<CsvMapping> of(List<String> headings) throws IOException {
        Path file = file(headings);
        if (!Files.exists(file)) {
            return Optional.empty();
        }
        return CsvMappingJson.read(Files.readString(file, StandardCharsets.UTF_8)).filter(mapping -> mapping.headings().equals(headings));
    }

    private Path file(List<String> headings) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(String.join("\n", headings).getBytes(StandardCharsets.UTF_8));
            return folder.resolve(HexFormat.of().formatHex(digest, 0, NAME_BYTES) + ENDING);
        } catch (NoSuchAlgorithmException impossible) { // every Java platform has SHA-256
            throw new IllegalStateException(impossible);
        }
    }
}
