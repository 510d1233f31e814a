// SPDX-License-Identifier: EPL-2.0
package garboard.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Properties;

import org.junit.jupiter.api.Test;

/** Every group of the particulars has a heading: words of the window, or the name of the part that it is called after. */
class FormHeadingsTest {

    private final Path bundles = Repository.find().root().resolve("bundles");

    private Properties read(String file) throws IOException {
        var texts = new Properties();
        texts.load(new StringReader(Files.readString(bundles.resolve(file))));
        return texts;
    }

    @Test
    void everyGroupOfTheParticularsHasAHeading() throws IOException {
        Properties pages = read("garboard.workbench/src/garboard/workbench/page/messages.properties");
        Properties items = read("garboard.workbench/src/garboard/workbench/fields/messages.properties");
        Properties labels = read("garboard.model/src/garboard/model/labels.properties");
        var faults = new ArrayList<String>();
        String place = "";
        int groups = 0;
        for (String line : Files.readAllLines(bundles.resolve("garboard.session/src/garboard/session/form/form.txt"))) {
            String[] words = line.strip().split("[ :]+");
            switch (words.length > 1 ? words[0] : "a field") {
                case "stop" -> place = "group." + words[1] + ".";
                case "items" -> place = "item." + words[1] + ".";
                case "group" -> {
                    String key = place + words[1];
                    groups++;
                    boolean ofPart = labels.stringPropertyNames().stream().anyMatch(label -> label.endsWith("." + words[1]));
                    if (!ofPart && !pages.containsKey(key) && !items.containsKey(key)) {
                        faults.add(key);
                    }
                }
                default -> { }
            }
        }
        assertThat(groups).isPositive();
        assertThat(faults).isEmpty();
    }

    @Test
    void noHeadingIsLeftOverFromAGroupThatIsGone() throws IOException {
        String form = Files.readString(bundles.resolve("garboard.session/src/garboard/session/form/form.txt"));
        Properties pages = read("garboard.workbench/src/garboard/workbench/page/messages.properties");
        assertThat(pages.stringPropertyNames()).filteredOn(key -> key.matches("group\\.[A-Z_]+\\..*"))
            .allMatch(key -> form.matches("(?s).*\\ngroup " + key.substring(key.lastIndexOf('.') + 1) + "( shut)?\\n.*"));
    }
}
