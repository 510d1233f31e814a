// SPDX-License-Identifier: EPL-2.0
package garboard.session.trial;

import java.util.Optional;
import java.util.Set;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.Cooling;
import garboard.model.Entered;
import garboard.model.ExhaustRun;
import garboard.model.FuelKind;
import garboard.model.FuelSystem;
import garboard.model.GeneratorSet;
import garboard.model.Muffler;
import garboard.model.MufflerKind;
import garboard.model.PhaseSystem;
import garboard.model.RawWaterCircuit;
import garboard.model.SiphonBreakKind;
import garboard.model.TransferKind;
import garboard.model.ValveKind;
import garboard.model.Vessel;

/** What a record says of the installation as far as the first start depends on it. */
final class Installed {

    private static final String FUEL = "generatorSet.fuel";
    private static final String FUEL_SYSTEM = "generatorSet.fuelSystem";

    private Installed() {
    }

    static Concern any(CommissioningRecord record) {
        return Concern.YES;
    }

    /** Petrol in the set or in another engine aboard: its vapour may be about. */
    static Concern petrol(CommissioningRecord record) {
        Answer otherEngine = Optional.ofNullable(record.getVessel()).map(Vessel::getGasolineEngineAboard).orElse(Answer.UNANSWERED);
        return switch (fuel(record)) {
            case GASOLINE -> Concern.YES;
            case NOT_ENTERED -> otherEngine == Answer.YES ? Concern.YES : Concern.until(FUEL);
            case DIESEL -> otherEngine == Answer.UNANSWERED ? Concern.until("vessel.gasolineEngineAboard") : Concern.of(otherEngine == Answer.YES);
        };
    }

    /** Fuel brought up by turning the key: injection with an electric pump. */
    static Concern keyPriming(CommissioningRecord record) {
        return switch (fuelSystem(record)) {
            case PORT_INJECTION, COMMON_RAIL -> Concern.YES;
            case CARBURETTOR, MECHANICAL_INJECTION -> Concern.NO;
            case NOT_ENTERED -> Concern.until(FUEL_SYSTEM);
        };
    }

    /** Fuel bled by hand: mechanical injection. */
    static Concern bleeding(CommissioningRecord record) {
        return switch (fuelSystem(record)) {
            case MECHANICAL_INJECTION -> Concern.YES;
            case PORT_INJECTION, CARBURETTOR, COMMON_RAIL -> Concern.NO;
            case NOT_ENTERED -> fuel(record) == FuelKind.GASOLINE ? Concern.NO : Concern.until(FUEL_SYSTEM);
        };
    }

    static Concern carburettor(CommissioningRecord record) {
        return switch (fuelSystem(record)) {
            case CARBURETTOR -> Concern.YES;
            case PORT_INJECTION, COMMON_RAIL, MECHANICAL_INJECTION -> Concern.NO;
            case NOT_ENTERED -> fuel(record) == FuelKind.DIESEL ? Concern.NO : Concern.until(FUEL_SYSTEM);
        };
    }

    /** A siphon break that can be tried: a loop without a vent has nothing to try. */
    static Concern siphonBreak(CommissioningRecord record) {
        SiphonBreakKind kind = Optional.ofNullable(record.getRawWater()).map(RawWaterCircuit::getSiphonBreak)
            .map(found -> found.getKind()).orElse(SiphonBreakKind.NOT_ENTERED);
        return kind == SiphonBreakKind.NOT_ENTERED && rawWater(record).holds() ? Concern.until("rawWater.siphonBreak.kind")
            : Concern.of(Set.of(SiphonBreakKind.VALVED_VENTED_LOOP, SiphonBreakKind.BLEED_OVERBOARD).contains(kind));
    }

    /** Raw water through the set or into its exhaust. A keel-cooled set may have neither. */
    static Concern rawWater(CommissioningRecord record) {
        boolean entered = Optional.ofNullable(record.getRawWater()).filter(Entered::anythingIn).isPresent() || mufflerKind(record).ordinal() > 0;
        Cooling cooling = Optional.ofNullable(record.getGeneratorSet()).map(GeneratorSet::getCooling).orElse(Cooling.NOT_ENTERED);
        if (entered) {
            return Concern.YES;
        }
        return switch (cooling) {
            case KEEL_COOLED -> Concern.NO;
            case NOT_ENTERED -> Concern.until("generatorSet.cooling");
            case HEAT_EXCHANGER, DIRECT_RAW_WATER -> Concern.YES;
        };
    }

    static Concern seacock(CommissioningRecord record) {
        ValveKind kind = Optional.ofNullable(record.getRawWater()).map(RawWaterCircuit::getSeacock).map(found -> found.getKind())
            .orElse(ValveKind.NOT_ENTERED);
        return kind == ValveKind.NOT_ENTERED ? rawWater(record) : Concern.of(kind != ValveKind.NONE);
    }

    /** A muffler that holds water. */
    static Concern muffler(CommissioningRecord record) {
        MufflerKind kind = mufflerKind(record);
        return kind == MufflerKind.NOT_ENTERED && rawWater(record).holds() ? Concern.until("exhaust.muffler.kind")
            : Concern.of(kind != MufflerKind.NOT_ENTERED && kind != MufflerKind.NONE);
    }

    static Concern threePhases(CommissioningRecord record) {
        PhaseSystem phases = Optional.ofNullable(record.getGeneratorSet()).map(GeneratorSet::getPhases).orElse(PhaseSystem.NOT_ENTERED);
        return phases == PhaseSystem.NOT_ENTERED ? Concern.until("generatorSet.phases") : Concern.of(phases == PhaseSystem.THREE_PHASE);
    }

    /** A second source, between which and the set somebody chooses. */
    static Concern transfer(CommissioningRecord record) {
        TransferKind kind = Optional.ofNullable(record.getAcOutput()).map(output -> output.getTransfer()).map(found -> found.getKind())
            .orElse(TransferKind.NOT_ENTERED);
        return kind == TransferKind.NOT_ENTERED ? Concern.until("acOutput.transfer.kind") : Concern.of(kind != TransferKind.NONE);
    }

    private static FuelKind fuel(CommissioningRecord record) {
        return Optional.ofNullable(record.getGeneratorSet()).map(GeneratorSet::getFuel).orElse(FuelKind.NOT_ENTERED);
    }

    private static FuelSystem fuelSystem(CommissioningRecord record) {
        return Optional.ofNullable(record.getGeneratorSet()).map(GeneratorSet::getFuelSystem).orElse(FuelSystem.NOT_ENTERED);
    }

    private static MufflerKind mufflerKind(CommissioningRecord record) {
        return Optional.ofNullable(record.getExhaust()).map(ExhaustRun::getMuffler).map(Muffler::getKind).orElse(MufflerKind.NOT_ENTERED);
    }
}
