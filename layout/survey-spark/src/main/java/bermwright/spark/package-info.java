// SPDX-License-Identifier: Apache-2.0
/**
 * Scores the blocks of a survey on an Apache Spark cluster.
 *
 * <p>Built only where it is asked for ({@code mvn -Pspark}); nothing else in the house knows of it.
 */
package bermwright.spark;
