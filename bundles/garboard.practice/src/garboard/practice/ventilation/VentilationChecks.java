// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ventilation;

import java.util.List;

import garboard.checks.Check;

/** The checks of ventilation and combustion air by the authority behind them. */
public final class VentilationChecks {

    private VentilationChecks() {
    }

    /** 33 CFR 183 subpart K, the ignition protection of subpart I, and 46 CFR 25.40-1 where those do not reach. */
    public static List<Check<?>> federal() {
        return List.of(BlowerRatedCapacity.check(), BlowerOutput.check(), BlowerIntakePlace.check(), BlowerLabelByLaw.check(),
            SupplyFromOutsideByLaw.check(), NaturalSupplyArea.check(), NaturalExhaustArea.check(), NaturalOpenings.check(),
            NaturalExhaustPlace.check(), DuctEndFittings.check(), IgnitionProtection.check(), CowledDucts.check());
    }

    /** 46 CFR subchapter T. */
    public static List<Check<?>> smallPassenger() {
        return List.of(GasolineDuctsOfPassengerVessel.check(), AirChangesOfPassengerVessel.check(), DuctVelocityOfPassengerVessel.check(),
            BlowerInterlockOfPassengerVessel.check(), BlowBeforeStartOfPassengerVessel.check(), IgnitionProtectionOfPassengerVessel.check(),
            DieselDuctsOfPassengerVessel.check(), SealedOfPassengerVessel.check());
    }

    /** Voluntary standards, as far as they were seen. */
    public static List<Check<?>> standards() {
        return List.of(SealedFromAccommodation.check());
    }

    /** Handbooks, common practice and physics. */
    public static List<Check<?>> handbook() {
        return List.of(VentArea.check(), CombustionAirInlet.check(), DuctsLowAndHigh.check(), SupplyClearOfExhaustOutlet.check(),
            BlowBeforeStart.check(),
            FanCarriesTheHeat.check(), DepressionForecast.check(), DepressionMeasured.check(), CompartmentRise.check(),
            CompartmentTemperature.check(), AirInletTemperature.check());
    }
}
