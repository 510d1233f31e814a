// SPDX-License-Identifier: EPL-2.0
package garboard.examples;

import java.util.List;
import java.util.Optional;

/** The example records. Vessels, makers and people in them are made up. */
public final class Examples {

    private Examples() {
    }

    public static List<Example> all() {
        return List.of(
            new Example("motor-cruiser", "A petrol set newly put into a motor cruiser, with shortfalls worth finding"),
            new Example("sailing-yacht", "A diesel set in a sailing yacht after a refit"),
            new Example("passenger-boat", "A three-phase diesel set in a small passenger boat"));
    }

    public static Optional<Example> find(String name) {
        return all().stream().filter(example -> example.name().equals(name)).findFirst();
    }
}
