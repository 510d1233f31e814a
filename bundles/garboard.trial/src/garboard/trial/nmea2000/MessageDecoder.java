// SPDX-License-Identifier: EPL-2.0
package garboard.trial.nmea2000;

import java.util.Optional;

import garboard.trial.log.AcLine;
import garboard.trial.log.Channel;
import garboard.trial.log.LogIntake;
import garboard.trial.log.LogStamps;
import garboard.trial.log.Measurand;

/** Turns whole messages into readings. */
final class MessageDecoder {

    private static final long NS_PER_DAY = 86_400_000_000_000L;
    /** Of 0.0001 s. */
    private static final long NS_PER_TICK = 100_000;

    private final LogIntake intake;
    private final CanBuses buses;
    private final ChannelGroups groups;

    MessageDecoder(Layouts layouts, CanBuses buses, LogIntake intake) {
        this.intake = intake;
        this.buses = buses;
        groups = new ChannelGroups(layouts, buses, intake);
    }

    /** A layout as the loop needs it. */
    static final class Plan {

        final MessageLayout layout;
        long decoded;
        private final FieldLayout[] readings;
        private final Optional<FieldLayout> instance;
        private final Optional<FieldLayout> code;
        private final Optional<FieldLayout> lines;
        private final boolean tellsTime;

        Plan(MessageLayout layout) {
            this.layout = layout;
            readings = layout.readings();
            instance = layout.key(MessageLayout.Key.INSTANCE);
            code = layout.key(MessageLayout.Key.CODE);
            lines = layout.key(MessageLayout.Key.LINES);
            tellsTime = layout.key(MessageLayout.Key.TIME).isPresent();
        }
    }

    /** Decodes a message of so many bytes; the payload has {@link Bits#ROOM} behind it. */
    void decode(Plan plan, long timeNs, int bus, int source, byte[] payload, int length) {
        plan.decoded++;
        if (plan.tellsTime) {
            clock(plan.layout, timeNs, bus, source, payload, length);
            return;
        }
        int instance = key(plan.instance, payload, length);
        int code = key(plan.code, payload, length);
        if (plan.lines.isEmpty()) {
            readings(plan, timeNs, groups.find(plan.layout, plan.readings, bus, source, instance, code, 3), payload, length, 0);
            return;
        }
        FieldLayout line = plan.layout.key(MessageLayout.Key.LINE).orElseThrow();
        int told = key(plan.lines, payload, length);
        for (int i = 0; i < told && line.isWithin(length, 8 * MessageLayout.LINE_BYTES * i); i++) {
            int moved = 8 * MessageLayout.LINE_BYTES * i;
            int number = (int) line.raw(payload, moved);
            readings(plan, timeNs, groups.find(plan.layout, plan.readings, bus, source, instance, code, number), payload, length, moved);
        }
    }

    private void readings(Plan plan, long timeNs, int[] channels, byte[] payload, int length, int moved) {
        FieldLayout[] fields = plan.readings;
        for (int i = 0; i < fields.length; i++) {
            FieldLayout field = fields[i];
            Coding.State state = Coding.State.NOT_AVAILABLE;
            if (field.isWithin(length, moved)) {
                long raw = field.raw(payload, moved);
                state = field.state(raw);
                if (state == Coding.State.VALUE) {
                    intake.value(timeNs, channels[i], field.si(raw));
                    continue;
                }
            }
            intake.missing(channels[i], state.mishap());
        }
    }

    private static int key(Optional<FieldLayout> field, byte[] payload, int length) {
        if (field.isEmpty() || !field.get().isWithin(length, 0)) {
            return ChannelGroups.UNTOLD;
        }
        long raw = field.get().raw(payload, 0);
        return field.get().state(raw) == Coding.State.VALUE ? (int) raw : ChannelGroups.UNTOLD;
    }

    private void clock(MessageLayout layout, long timeNs, int bus, int source, byte[] payload, int length) {
        FieldLayout day = layout.key(MessageLayout.Key.DAY).orElseThrow();
        FieldLayout time = layout.key(MessageLayout.Key.TIME).orElseThrow();
        int channel = intake.channel(new Channel(Measurand.CLOCK, AcLine.NONE, "", "",
            new Channel.Origin(buses.name(bus), Integer.toString(source), Integer.toString(layout.pgn()))));
        Coding.State state = worse(state(day, payload, length), state(time, payload, length));
        if (state != Coding.State.VALUE) {
            intake.missing(channel, state.mishap());
            return;
        }
        long utcNs = day.raw(payload, 0) * NS_PER_DAY + time.raw(payload, 0) * NS_PER_TICK;
        intake.clock(timeNs, utcNs);
        intake.value(timeNs, channel, LogStamps.seconds(utcNs));
    }

    private static Coding.State state(FieldLayout field, byte[] payload, int length) {
        return field.isWithin(length, 0) ? field.state(field.raw(payload, 0)) : Coding.State.NOT_AVAILABLE;
    }

    private static Coding.State worse(Coding.State one, Coding.State other) {
        return one == Coding.State.VALUE ? other : one;
    }
}
