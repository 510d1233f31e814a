// SPDX-License-Identifier: EPL-2.0
package garboard.trial.nmea0183;

import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.OptionalDouble;
import java.util.OptionalLong;

import garboard.quantity.Angle;
import garboard.quantity.RotationalSpeed;
import garboard.quantity.Speed;
import garboard.quantity.Temperature;
import garboard.trial.log.AcLine;
import garboard.trial.log.Channel;
import garboard.trial.log.Decimal;
import garboard.trial.log.LogIntake;
import garboard.trial.log.LogOptions;
import garboard.trial.log.LogStamps;
import garboard.trial.log.LogTally;
import garboard.trial.log.Measurand;
import garboard.trial.log.Mishap;

/** Takes the sentences of one log: RPM, XDR, MTW, ZDA and RMC; others are counted by their type. */
public final class Sentences {

    private static final int XDR_GROUP = 4;

    private final LogIntake intake;
    private final LogTally tally;
    private boolean timed;
    private boolean stamped;
    private long nowNs;

    /** Takes the sentences of one log. */
    public Sentences(LogIntake intake, LogOptions options) {
        this.intake = intake;
        tally = intake.tally();
        timed = options.start().isPresent();
        nowNs = options.start().map(LogStamps::ns).orElse(0L);
    }

    /** Takes one sentence with the time that the logger tells. */
    public void take(String text, OptionalLong loggerNs) {
        switch (Sentence.in(text)) {
            case Sentence.Nothing nothing -> tally.count(Mishap.UNREADABLE_LINE);
            case Sentence.WrongChecksum wrong -> tally.count(Mishap.CHECKSUM);
            case Sentence.Whole whole -> whole(whole.sentence(), loggerNs.isPresent() ? loggerNs : whole.sentence().timeNs());
        }
    }

    private void whole(Sentence sentence, OptionalLong time) {
        if (time.isPresent()) {
            stamped = true;
            now(time.getAsLong());
        }
        boolean known = switch (sentence.type()) {
            case "RPM" -> speed(sentence);
            case "XDR" -> transducers(sentence);
            case "MTW" -> seaTemperature(sentence);
            case "ZDA" -> clock(sentence, sentence.field(0), sentence.field(1), sentence.field(2), sentence.field(3));
            case "RMC" -> course(sentence);
            default -> false;
        };
        if (known) {
            tally.messages(sentence.type(), 1);
        } else {
            tally.foreign(sentence.talker().equals("P") ? "P" + sentence.type() : sentence.type());
        }
    }

    private void now(long ns) {
        nowNs = ns;
        timed = true;
        tally.time(ns);
    }

    private boolean speed(Sentence s) {
        boolean engine = s.field(0).equals("E");
        int channel = channel(s, engine ? Measurand.ENGINE_SPEED : Measurand.SPEED, s.field(1), engine ? "" : "shaft");
        number(channel, s.field(4).equals("A") ? s.field(2) : "", x -> RotationalSpeed.of(x, "r/min").si());
        return true;
    }

    private boolean transducers(Sentence s) {
        for (int i = 0; i + XDR_GROUP <= s.fields().size(); i += XDR_GROUP) {
            String name = s.field(i + 3);
            var meaning = Transducers.shared().meaning(s.field(i), s.field(i + 2), name);
            if (meaning.isPresent()) {
                number(channel(s, meaning.get().measurand(), name, ""), s.field(i + 1), meaning.get()::si);
            } else {
                tally.foreign("XDR " + shortened(s.field(i)) + " " + shortened(s.field(i + 2)));
            }
        }
        if (s.fields().size() % XDR_GROUP != 0) {
            tally.count(Mishap.UNREADABLE_VALUE);
        }
        return true;
    }

    private static String shortened(String text) {
        return text.substring(0, Math.min(text.length(), 4));
    }

    private boolean seaTemperature(Sentence s) {
        number(channel(s, Measurand.SEA_TEMPERATURE, "", ""), s.field(1).equals("C") ? s.field(0) : "", x -> Temperature.of(x, "degC").si());
        return true;
    }

    private boolean course(Sentence s) {
        String date = s.field(8);
        boolean dated = date.length() == 6;
        // RMC tells the last two digits of the year; NMEA 0183 itself is of 1983.
        clock(s, s.field(0), dated ? date.substring(0, 2) : "", dated ? date.substring(2, 4) : "", dated ? "20" + date.substring(4) : "");
        boolean valid = s.field(1).equals("A");
        number(channel(s, Measurand.LATITUDE, "", ""), valid ? s.field(2) : "", x -> degreesAndMinutes(x, s.field(3).equals("S")));
        number(channel(s, Measurand.LONGITUDE, "", ""), valid ? s.field(4) : "", x -> degreesAndMinutes(x, s.field(5).equals("W")));
        number(channel(s, Measurand.SPEED_OVER_GROUND, "", ""), valid ? s.field(6) : "", x -> Speed.of(x, "kn").si());
        number(channel(s, Measurand.COURSE_OVER_GROUND, "", "true"), valid ? s.field(7) : "", x -> Angle.of(x, "deg").si());
        return true;
    }

    /** {@code 5310.8112} is 53 degrees and 10.8112 minutes. */
    private static double degreesAndMinutes(double number, boolean negative) {
        double degrees = Math.floor(number / 100);
        double angle = Angle.of(degrees + (number - 100 * degrees) / 60, "deg").si();
        return negative ? -angle : angle;
    }

    /** Takes universal time from a sentence; it is the time of the log where the logger tells none. */
    private boolean clock(Sentence s, String time, String day, String month, String year) {
        OptionalLong utc = utc(time, day, month, year);
        if (utc.isEmpty()) {
            tally.count(Mishap.NOT_AVAILABLE);
            return true;
        }
        if (!stamped) {
            now(utc.getAsLong());
        }
        int channel = channel(s, Measurand.CLOCK, "", "");
        intake.clock(nowNs, utc.getAsLong());
        intake.value(nowNs, channel, LogStamps.seconds(utc.getAsLong()));
        return true;
    }

    private static OptionalLong utc(String time, String day, String month, String year) {
        if (!time.matches("\\d{6}(\\.\\d{1,9})?") || !day.matches("\\d{1,2}") || !month.matches("\\d{1,2}") || !year.matches("20\\d\\d")) {
            return OptionalLong.empty();
        }
        try {
            int seconds = Math.min(59, Integer.parseInt(time.substring(4, 6))); // a leap second is the one before it again
            LocalDateTime utc = LocalDateTime.of(Integer.parseInt(year), Integer.parseInt(month), Integer.parseInt(day),
                Integer.parseInt(time.substring(0, 2)), Integer.parseInt(time.substring(2, 4)), seconds);
            double fraction = time.length() > 6 ? Double.parseDouble("0" + time.substring(6)) : 0;
            return OptionalLong.of(LogStamps.ns(utc.toInstant(ZoneOffset.UTC)) + Math.round(fraction * 1e9));
        } catch (DateTimeException noSuchTime) {
            return OptionalLong.empty();
        }
    }

    private int channel(Sentence s, Measurand measurand, String instance, String detail) {
        return intake.channel(new Channel(measurand, AcLine.NONE, instance, detail, new Channel.Origin("", s.talker(), s.type())));
    }

    /** To the SI unit. */
    private interface ToSi {
        double si(double number);
    }

    private void number(int channel, String text, ToSi toSi) {
        if (text.isBlank()) {
            intake.missing(channel, Mishap.NOT_AVAILABLE);
            return;
        }
        OptionalDouble number = Decimal.parse(text);
        if (number.isEmpty()) {
            intake.missing(channel, Mishap.UNREADABLE_VALUE);
        } else if (!timed) {
            intake.missing(channel, Mishap.NO_TIME);
        } else {
            value(channel, number.getAsDouble(), toSi);
        }
    }

    private void value(int channel, double number, ToSi toSi) {
        double si;
        try {
            si = toSi.si(number);
        } catch (IllegalArgumentException cannotBe) { // such as a temperature below absolute zero
            intake.missing(channel, Mishap.IMPOSSIBLE);
            return;
        }
        intake.value(nowNs, channel, si);
    }
}
