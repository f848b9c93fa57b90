// SPDX-License-Identifier: Apache-2.0
/**
 * Makes what is handed out: pages of the manual, images with their own Java, checksums; built only with {@code -Prelease}.
 */
package bermwright.release;
