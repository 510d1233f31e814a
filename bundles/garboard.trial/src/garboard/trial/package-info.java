// SPDX-License-Identifier: EPL-2.0
/**
 * A trial by its instruments' logs. The way of a log into a record:
 *
 * <pre>{@code
 * LogFile log = LogFile.of(path);                              // format told by its lines; LogFormatException says what is wrong
 * LogReader reader = log.reader(options);                      // a table: log.remembered(mappings), else log.proposal(zone), confirmed
 * LogImport.Outcome done = LogImport.of(log, reader).into(storeFile, progress);
 * done.provenance().told();                                    // all that was left out or strange, to be shown
 *
 * try (ReadingStore store = ReadingStore.open(storeFile)) {
 *     var load = AssignmentProposal.load(store.channels()).stream().map(StoredChannel::number).toList();
 *     var steps = new StepDetector(StepSettings.USUAL).detect(LoadSignal.of(store, load));       // a person confirms
 *     var assignment = AssignmentProposal.of(store.channels()).best();                           // a person confirms
 *     var readings = new TrialReadings(store, assignment, UnitSystem.SI);
 *     for (StepProposal step : steps) {
 *         trial.getLoadSteps().add(readings.step(step, ratedPowerSi, 3));
 *     }
 *     Plot plot = store.plot(channel, fromNs, toNs, width);
 * }
 * }</pre>
 *
 * <p>Nothing is invented on the way: what a sender marks as not available, what cannot be true, what is cut or out of place is left out,
 * counted and told. SI doubles everywhere; quantities with units come in where a reading enters the record. Reading streams: the memory
 * needed does not grow with the length of a log, but for some bytes for each four thousand readings.
 */
package garboard.trial;
