// SPDX-License-Identifier: EPL-2.0
package garboard.report;

import java.util.Map;
import java.util.Optional;

import org.eclipse.emf.ecore.EAttribute;

import garboard.model.CommissioningRecord;
import garboard.model.GarboardPackage.Literals;
import garboard.model.GeneratorSet;
import garboard.quantity.Quantity;

/**
 * The maker's own limit of a quantity that is read under load.
 *
 * @param value the limit
 * @param atMost whether the reading must not be above it; otherwise it must not be below
 */
public record MakersLimit(Quantity<?> value, boolean atMost) {

    private record Side(EAttribute limit, boolean atMost) {
    }

    private static final Map<EAttribute, Side> SIDES = Map.of(
        Literals.READING__OIL_PRESSURE, new Side(Literals.MAKER_LIMITS__MINIMUM_OIL_PRESSURE, false),
        Literals.READING__COOLANT_TEMPERATURE, new Side(Literals.MAKER_LIMITS__MAXIMUM_COOLANT_TEMPERATURE, true),
        Literals.READING__EXHAUST_DRY, new Side(Literals.MAKER_LIMITS__MAXIMUM_EXHAUST_TEMPERATURE, true),
        Literals.READING__BACK_PRESSURE, new Side(Literals.MAKER_LIMITS__MAXIMUM_BACK_PRESSURE, true),
        Literals.READING__COMPARTMENT_TEMPERATURE, new Side(Literals.MAKER_LIMITS__MAXIMUM_COMPARTMENT_TEMPERATURE, true),
        Literals.READING__COMPARTMENT_DEPRESSION, new Side(Literals.MAKER_LIMITS__MAXIMUM_DEPRESSION, true),
        Literals.READING__FUEL_VACUUM, new Side(Literals.MAKER_LIMITS__MAXIMUM_FUEL_VACUUM, true),
        Literals.READING__RAW_WATER_VACUUM, new Side(Literals.MAKER_LIMITS__MAXIMUM_RAW_WATER_VACUUM, true),
        Literals.READING__RAW_WATER_FLOW, new Side(Literals.MAKER_LIMITS__MINIMUM_RAW_WATER_FLOW, false));

    /** {@return the limit of a field of a reading, where the maker has one and it is entered} */
    public static Optional<MakersLimit> of(EAttribute reading, CommissioningRecord record) {
        return Optional.ofNullable(record.getGeneratorSet()).map(GeneratorSet::getMakerLimits)
            .flatMap(limits -> Optional.ofNullable(SIDES.get(reading)).filter(side -> limits.eIsSet(side.limit))
                .map(side -> new MakersLimit((Quantity<?>) limits.eGet(side.limit), side.atMost)));
    }
}
