// SPDX-License-Identifier: EPL-2.0
package garboard.report.drawing;

import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

import garboard.checks.Evaluation;
import garboard.model.CommissioningRecord;
import garboard.model.Vessel;
import garboard.physics.geometry.Attitude;
import garboard.physics.geometry.HeeledHeight;
import garboard.quantity.Length;

/** What there is to draw of an installation: parts and their places, the hull, the water about it. As it was when it was made. */
public final class Arrangement {

    private final List<PlacedPart> parts;
    private final List<PlacedPart> exhaustPath;
    private final Water water;
    private final Optional<Path2D> side;
    private final Optional<Path2D> cross;
    private final Map<String, Optional<Length>> dimensions = new LinkedHashMap<>();
    private final String heelField;
    private final Words words;

    private Arrangement(CommissioningRecord record, Evaluation evaluation, Words words) {
        this.parts = PlacedParts.of(record, evaluation, words);
        this.exhaustPath = PlacedParts.exhaustPath(record);
        this.water = Water.about(record);
        this.side = HullOutline.side(record);
        this.cross = HullOutline.cross(record);
        this.words = words;
        this.heelField = "vessel." + Water.fieldOfHeel(record);
        Optional<Vessel> vessel = Optional.ofNullable(record.getVessel());
        dimensions.put("lengthOverall", vessel.map(Vessel::getLengthOverall));
        dimensions.put("beam", vessel.map(Vessel::getBeam));
        dimensions.put("draught", vessel.map(Vessel::getDraught));
        dimensions.put("freeboardAmidships", vessel.map(Vessel::getFreeboardAmidships));
    }

    public static Arrangement of(CommissioningRecord record, Evaluation evaluation, Words words) {
        return new Arrangement(record, evaluation, words);
    }

    /** {@return the parts in the order of flow, placed or not} */
    public List<PlacedPart> parts() {
        return parts;
    }

    /** {@return the points of the measured path of the exhaust} */
    public List<PlacedPart> exhaustPath() {
        return exhaustPath;
    }

    public Water water() {
        return water;
    }

    Optional<Path2D> hull(View view) {
        return view == View.CROSS ? cross : side;
    }

    /** {@return the part, or the point of the exhaust's path, with this id} */
    public Optional<PlacedPart> part(String id) {
        return parts.stream().filter(part -> part.id().equals(id)).findFirst()
            .or(() -> exhaustPath.stream().filter(part -> part.id().equals(id)).findFirst());
    }

    /** {@return the part to which a place in the record belongs: the field of its height, its bore, itself} */
    public Optional<PlacedPart> partOf(String key) {
        return parts.stream().filter(part -> part.has(key)).findFirst()
            .or(() -> exhaustPath.stream().filter(part -> part.has(key)).findFirst());
    }

    /** {@return the points that keep the sea out and whose place is entered, the lowest above the water first} */
    public List<Clearance> clearances(Attitude attitude) {
        var clearances = new ArrayList<Clearance>();
        keepers().forEach(part -> part.place().ifPresent(place -> clearances.add(new Clearance(part, HeeledHeight.of(place, attitude).si()))));
        clearances.sort(Comparator.comparingDouble(Clearance::metres));
        return clearances;
    }

    /** {@return the point that comes lowest in any attitude designed for, of those that keep the sea out} */
    public Optional<PlacedPart> worst() {
        return keepers().stream().filter(part -> part.place().isPresent())
            .min(Comparator.comparingDouble(part -> water.worst(part.place().orElseThrow()).height().si()));
    }

    List<PlacedPart> keepers() {
        return PlacedParts.KEEPERS.stream().map(this::part).flatMap(Optional::stream).toList();
    }

    /** {@return what a view cannot show, and the dimension that it needs first} */
    public List<Lack> lacks(View view) {
        var lacks = new ArrayList<Lack>();
        for (PlacedPart part : view == View.CLEARANCE ? keepers() : parts) {
            List<String> missing = missing(part, view);
            if (!missing.isEmpty() && !(view == View.RUNS && part.circuit() == PlacedPart.Circuit.FUEL)) {
                lacks.add(new Lack(part.id(), shortName(part), missing, part.key() + "." + missing.getFirst()));
            }
        }
        if (view.elevation()) {
            List<String> hull = List.of(view == View.SIDE ? "lengthOverall" : "beam", "draught", "freeboardAmidships").stream()
                .filter(name -> dimensions.get(name).filter(length -> length.si() > 0).isEmpty()).toList();
            if (!hull.isEmpty()) {
                lacks.add(new Lack("hull", words.get("lack.hull"), hull.stream().map(name -> words.get("lack." + name)).toList(),
                    "vessel." + hull.getFirst()));
            }
        }
        if (view != View.RUNS && water.heel().si() == 0) {
            lacks.add(new Lack("heel", words.get("lack.heel"), List.of(words.get("lack.angle")), heelField));
        }
        return lacks;
    }

    private static List<String> missing(PlacedPart part, View view) {
        var missing = new ArrayList<String>();
        if (part.z().isEmpty()) {
            missing.add("z");
        }
        if (view != View.CROSS && part.x().isEmpty()) {
            missing.add("x");
        }
        if (view != View.SIDE && part.y().isEmpty()) {
            missing.add("y");
        }
        return missing;
    }

    /** {@return what a part is called where there is little room} */
    String shortName(PlacedPart part) {
        return words.has("short." + part.id()) ? words.get("short." + part.id()) : part.name();
    }

    /** {@return the coordinate that runs across a view} */
    static OptionalDouble across(PlacedPart part, View view) {
        return view == View.CROSS ? part.y() : part.x();
    }
}
