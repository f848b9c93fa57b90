// SPDX-License-Identifier: Apache-2.0
package bermwright.rules.lowering;

import bermwright.published.PublishedRule;

class PublishedRuleTest extends PublishedRule {
}
