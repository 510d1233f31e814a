// SPDX-License-Identifier: EPL-2.0
package garboard.trial.steps;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EStructuralFeature;

import garboard.model.GarboardPackage;
import garboard.trial.log.Channel;
import garboard.trial.store.ReadingStore;
import garboard.trial.store.StoredChannel;

/**
 * Which channel of the logs of a boat fills which field of a reading, as a person has settled it. It is kept by the keys of the channels
 * ({@link Channel#key()}), so that it holds for the next log of the same instruments.
 *
 * @param channelKeys by the name of the field
 */
public record Assignment(Map<String, String> channelKeys) {

    private static final String PARTED_BY = " = ";

    /**
     * @throws IllegalArgumentException when a name is no field of a reading that an instrument can fill
     */
    public Assignment {
        channelKeys = Map.copyOf(channelKeys);
        for (String name : channelKeys.keySet()) {
            if (field(name).isEmpty()) {
                throw new IllegalArgumentException(name + " is no field of a reading");
            }
        }
    }

    /** {@return an assignment of channels to fields} */
    public static Assignment of(Map<EAttribute, Channel> channels) {
        return new Assignment(channels.entrySet().stream()
            .collect(Collectors.toMap(entry -> entry.getKey().getName(), entry -> entry.getValue().key())));
    }

    private static Optional<EAttribute> field(String name) {
        EStructuralFeature feature = GarboardPackage.Literals.READING.getEStructuralFeature(name);
        return feature instanceof EAttribute attribute && AssignmentProposal.isFilledByInstruments(attribute) ? Optional.of(attribute)
            : Optional.empty();
    }

    /** {@return the channels of a store that are assigned, in the order of the fields; one that the store lacks is left out} */
    public Map<EAttribute, StoredChannel> in(ReadingStore store) {
        Map<EAttribute, StoredChannel> found = new LinkedHashMap<>();
        for (EAttribute attribute : AssignmentProposal.fields()) {
            Optional.ofNullable(channelKeys.get(attribute.getName())).flatMap(store::withKey).ifPresent(stored -> found.put(attribute, stored));
        }
        return found;
    }

    /** Keeps the assignment in a file, one field a line. */
    public void write(Path file) throws IOException {
        Files.write(file, new TreeMap<>(channelKeys).entrySet().stream().map(entry -> entry.getKey() + PARTED_BY + entry.getValue()).toList(),
            StandardCharsets.UTF_8);
    }

    /** {@return the assignment in a file} Lines that are none are left out: what they said has to be settled anew. */
    public static Assignment read(Path file) throws IOException {
        Map<String, String> keys = new LinkedHashMap<>();
        for (String line : Files.readAllLines(file, StandardCharsets.UTF_8)) {
            int parted = line.indexOf(PARTED_BY);
            if (parted > 0 && field(line.substring(0, parted)).isPresent()) {
                keys.put(line.substring(0, parted), line.substring(parted + PARTED_BY.length()));
            }
        }
        return new Assignment(keys);
    }
}
