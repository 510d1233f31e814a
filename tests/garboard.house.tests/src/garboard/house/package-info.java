// SPDX-License-Identifier: EPL-2.0
/** Tests about the house itself: who may see whom, and how sources and documents are kept. Plain file scanning. */
package garboard.house;
