// SPDX-License-Identifier: EPL-2.0
/**
 * Opening, saving and closing records so that nothing is lost unasked: what a file is and why it cannot be read, whether another program
 * changed it, which records were open last. What a person is asked goes through {@link garboard.session.files.FilingQuestions}.
 */
package garboard.session.files;
