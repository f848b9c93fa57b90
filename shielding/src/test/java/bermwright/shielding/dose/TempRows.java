package bermwright.shielding.dose;
public final class TempRows { public static void main(String[] a) {
  for (String[] r : DoseRows.printed()) { double o=DoseRows.answers().get(r[0]); boolean in=o>=Double.parseDouble(r[2])&&o<=Double.parseDouble(r[3]); System.out.printf("%s %s printed %s ours %.4g (%s..%s) %s%n", in?"   ":"OUT", r[0], r[1], o, r[2], r[3], r[5]); }
  for (PublishedDose d : PublishedDose.cosmic()) if (a.length==0) System.out.printf("beside %.0f %s W%.0f old %.4g now %.4g%n", d.arealDensity()/10, d.work().source().substring(0,20), d.modulationW(), d.ours()*365.25e3, DoseRows.beside(d)*365.25e3);
} }
