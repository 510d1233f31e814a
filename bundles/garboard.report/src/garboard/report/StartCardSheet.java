// SPDX-License-Identifier: EPL-2.0
package garboard.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import garboard.model.Answer;
import garboard.model.FuelKind;
import garboard.model.GeneratorSet;
import garboard.model.Vessel;

/** One page for the owner to keep beside the start panel. */
final class StartCardSheet {

    private static final List<String> BEFORE = List.of(
        "Bilge and compartment dry, no smell of fuel",
        "Oil and coolant at their marks, belt sound",
        "Raw-water seacock open, strainer clear",
        "Fuel on, water bowl of the separator clear",
        "Exhaust hose and clamps sound to the eye",
        "Carbon monoxide alarms alive in every space where people stay",
        "Nobody in the water near the exhaust outlet; outlet clear of quay, wall and other boats",
        "Breaker of the set open, loads off");
    private static final List<String> AFTER = List.of(
        "Oil pressure within a few seconds, otherwise stop",
        "Water at the outlet within half a minute and no steam, otherwise stop",
        "Voltage and frequency right, then close the breaker and add loads one by one",
        "Look at hoses, fuel lines and exhaust once more while it runs");
    private static final List<String> STOP = List.of(
        "Loads off; run three to five minutes without load",
        "Stop, open the breaker, shut the fuel where the set stands idle for long",
        "Leaving the boat: shut the seacock and hang the tag at the start panel");
    private static final List<String> NO_START = List.of(
        "After the attempts that the maker allows, and at the latest after three, shut the raw-water seacock and drain the muffler before "
            + "cranking on",
        "Let the starter cool between attempts",
        "Open the seacock again the moment it fires");

    private StartCardSheet() {
    }

    static Optional<Sheet> of(Material material) {
        GeneratorSet set = material.record().getGeneratorSet();
        if (set == null) {
            return Optional.empty();
        }
        var before = new ArrayList<>(BEFORE);
        if (petrolAboard(material, set)) {
            before.add(1, "Blower run for at least four minutes, then nose down in the bilge once more");
        }
        var blocks = new ArrayList<Block>();
        add("Before each start", before, blocks);
        add("After it has fired", AFTER, blocks);
        add("If it does not fire", NO_START, blocks);
        add("Before stopping, and after", STOP, blocks);
        blocks.add(Block.note("The maker's manual comes first where it says otherwise."));
        return Optional.of(new Sheet("Start card", "Start card", Orientation.PORTRAIT, blocks));
    }

    private static boolean petrolAboard(Material material, GeneratorSet set) {
        Vessel vessel = material.record().getVessel();
        return set.getFuel() != FuelKind.DIESEL || vessel != null && vessel.getGasolineEngineAboard() == Answer.YES;
    }

    private static void add(String heading, List<String> lines, List<Block> into) {
        into.add(new Block.Heading(heading));
        var table = Table.of(Table.text("box", "", 8), Table.text("line", "", 174)).size(Table.Size.LARGE);
        lines.forEach(line -> table.row(Cell.text("\u25a1"), Cell.text(line)));
        into.add(table.build());
    }
}
