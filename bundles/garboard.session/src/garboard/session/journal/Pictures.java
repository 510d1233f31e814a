// SPDX-License-Identifier: EPL-2.0
package garboard.session.journal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Properties;

import garboard.model.CommissioningRecord;
import garboard.model.GarboardPackage.Literals;
import garboard.model.Photograph;
import garboard.session.files.WholeFile;

/**
 * The photographs of a record beside it, each in a file that is written once: they are most of the bytes of a record and change seldom,
 * and everything else is written again after each edit.
 */
final class Pictures {

    private static final String KEY = "picture.";

    private final Path folder;
    /** By the array itself: an edit puts another one in its place. */
    private final Map<byte[], String> kept = new IdentityHashMap<>();
    private int last;

    Pictures(Path folder) {
        this.folder = folder;
    }

    /** Takes the pictures out of a copy of a record and writes those that are new. @param names takes which photograph has which */
    void takeOut(CommissioningRecord copy, Properties names) throws IOException {
        for (Photograph photograph : copy.getPhotographs()) {
            if (photograph.getData() != null && photograph.getId() != null) {
                names.setProperty(KEY + photograph.getId(), name(photograph.getData()));
                photograph.eUnset(Literals.PHOTOGRAPH__DATA);
            }
        }
    }

    private String name(byte[] data) throws IOException {
        String name = kept.get(data);
        if (name == null) {
            name = "picture-" + ++last;
            WholeFile.write(folder.resolve(name), data);
            kept.put(data, name);
        }
        return name;
    }

    void forget() {
        kept.clear();
    }

    /** Puts the pictures back into a record that was read from the journal. One that cannot be read stays away; the rest is not lost with it. */
    static void putBack(CommissioningRecord record, Properties names, Path folder) {
        for (Photograph photograph : record.getPhotographs()) {
            String name = names.getProperty(KEY + photograph.getId(), "");
            if (name.matches("picture-[0-9]+")) {
                try {
                    photograph.setData(Files.readAllBytes(folder.resolve(name)));
                } catch (IOException missing) {
                    System.getLogger(Pictures.class.getName()).log(System.Logger.Level.WARNING, "A photograph of the journal is not there", missing);
                }
            }
        }
    }
}
