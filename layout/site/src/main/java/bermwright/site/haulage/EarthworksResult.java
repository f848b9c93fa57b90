// SPDX-License-Identifier: Apache-2.0
package bermwright.site.haulage;

import bermwright.finding.Finding;
import bermwright.foundation.ModelNote;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Which soil goes where, over what distance, in how many machine hours, and what remains.
 *
 * @param placed       volume of all soil once placed (m3)
 * @param bank         its volume before digging (m3); what is short is counted at the plan's bank density
 * @param loose        its volume in the haulers (m3)
 * @param mass         its mass (kg)
 * @param spread       one standard deviation of bank and loose volume and of mass, from the densities
 * @param hauls        what is carried, in the order of the needs
 * @param machineHours machine hours of all hauls (h); empty where the plan has no machine
 * @param energy       energy of all hauls (J); empty where the plan has no machine
 * @param machineDays  days by machine, with all machines of a kind at work
 * @param borrowLeft   usable bank volume left in the borrow grounds (m3)
 * @param shortage     bank volume that no borrow ground can give (m3), nothing where there is enough
 * @param dug          the borrow grounds, how much each holds and gives, and the ground left behind
 * @param notes        models behind the figures
 * @param findings     what was found
 */
public record EarthworksResult(double placed, double bank, double loose, double mass, Spread spread, List<Haul> hauls,
        OptionalDouble machineHours, OptionalDouble energy, List<MachineDays> machineDays, double borrowLeft,
        double shortage, List<DugGround> dug, List<ModelNote> notes, List<Finding> findings) {
    /** Copies the lists. */
    public EarthworksResult {
        hauls = List.copyOf(hauls);
        machineDays = List.copyOf(machineDays);
        dug = List.copyOf(dug);
        notes = List.copyOf(notes);
        findings = List.copyOf(findings);
    }

    /**
     * One standard deviation from the densities, which are taken as independent of each other.
     *
     * @param bank  of the bank volume (m3)
     * @param loose of the loose volume (m3)
     * @param mass  of the mass (kg)
     */
    public record Spread(double bank, double loose, double mass) {
    }

    /**
     * Work of the machines of one kind.
     *
     * @param machine id of the machine
     * @param hours   machine hours (h)
     * @param days    days with all of them at work, given hours a day and availability (days)
     */
    public record MachineDays(String machine, double hours, double days) {
    }
}
