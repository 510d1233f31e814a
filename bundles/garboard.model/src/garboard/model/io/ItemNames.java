// SPDX-License-Identifier: EPL-2.0
package garboard.model.io;

import java.util.Locale;
import java.util.Map;

import org.eclipse.emf.ecore.EClass;

/** The word that ids of items of a class begin with: {@code hose} in {@code hose-2}. */
final class ItemNames {

    /** Where the name of the class is not the word itself. Ids stand in files: a word is never changed. */
    private static final Map<String, String> WORDS = Map.ofEntries(
        Map.entry("Photograph", "photo"),
        Map.entry("BatteryBlock", "block"),
        Map.entry("CableRun", "cable"),
        Map.entry("FuelLineRun", "fuel-line"),
        Map.entry("WaterHoseRun", "hose"),
        Map.entry("PipeFitting", "fitting"),
        Map.entry("ExhaustSectionRun", "exhaust"),
        Map.entry("ExhaustBend", "bend"),
        Map.entry("AirDuct", "duct"),
        Map.entry("ElectricalLoad", "load"),
        Map.entry("AlarmDevice", "alarm"),
        Map.entry("InspectionAnswer", "answer"),
        Map.entry("ProcedureStep", "step"),
        Map.entry("CrankingAttempt", "attempt"),
        Map.entry("UpkeepTask", "task"),
        Map.entry("StoredVerdict", "verdict"),
        Map.entry("UnreadEntry", "unread"));

    private ItemNames() {
    }

    static String word(EClass type) {
        String name = type.getName();
        return WORDS.getOrDefault(name, name.replaceAll("(?<=[a-z])(?=[A-Z])", "-").toLowerCase(Locale.ROOT));
    }
}
