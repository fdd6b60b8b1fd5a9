// CIAAW, Standard atomic weights of the elements 2021, www.ciaaw.org/atomic-weights.htm, as carried by another program since 2023-07-06
// (periodictable, periodictable/mass.py, element_mass): symbol, name, value with its limit in units of the last digit, and the interval
// where there is one, the value then being the abridged one. Read as printed.
export const CIAAW_2021 = `
H hydrogen 1.0080(2) [1.00784,1.00811]
He helium 4.002602(2)
Li lithium 6.94(6) [6.938,6.997]
Be beryllium 9.0121831(5)
B boron 10.81(2) [10.806,10.821]
C carbon 12.011(2) [12.0096,12.0116]
N nitrogen 14.007(1) [14.00643,14.00728]
O oxygen 15.999(1) [15.99903,15.99977]
F fluorine 18.998403162(5)
Ne neon 20.1797(6)
Na sodium 22.98976928(2)
Mg magnesium 24.305(2) [24.304,24.307]
Al aluminium 26.9815384(3)
Si silicon 28.085(1) [28.084,28.086]
P phosphorus 30.973761998(5)
S sulfur 32.06(2) [32.059,32.076]
Cl chlorine 35.45(1) [35.446,35.457]
Ar argon 39.95(16) [39.792,39.963]
K potassium 39.0983(1)
Ca calcium 40.078(4)
Sc scandium 44.955907(4)
Ti titanium 47.867(1)
V vanadium 50.9415(1)
Cr chromium 51.9961(6)
Mn manganese 54.938043(2)
Fe iron 55.845(2)
Co cobalt 58.933194(3)
Ni nickel 58.6934(4)
Cu copper 63.546(3)
Zn zinc 65.38(2)
Ga gallium 69.723(1)
Ge germanium 72.630(8)
As arsenic 74.921595(6)
Se selenium 78.971(8)
Br bromine 79.904(3) [79.901,79.907]
Kr krypton 83.798(2)
Rb rubidium 85.4678(3)
Sr strontium 87.62(1)
Y yttrium 88.905838(2)
Zr zirconium 91.224(2)
Nb niobium 92.90637(1)
Mo molybdenum 95.95(1)
Ru ruthenium 101.07(2)
Rh rhodium 102.90549(2)
Pd palladium 106.42(1)
Ag silver 107.8682(2)
Cd cadmium 112.414(4)
In indium 114.818(1)
Sn tin 118.710(7)
Sb antimony 121.760(1)
Te tellurium 127.60(3)
I iodine 126.90447(3)
Xe xenon 131.293(6)
Cs caesium 132.90545196(6)
Ba barium 137.327(7)
La lanthanum 138.90547(7)
Ce cerium 140.116(1)
Pr praseodymium 140.90766(1)
Nd neodymium 144.242(3)
Sm samarium 150.36(2)
Eu europium 151.964(1)
Gd gadolinium 157.25(3)
Tb terbium 158.925354(7)
Dy dysprosium 162.500(1)
Ho holmium 164.930329(5)
Er erbium 167.259(3)
Tm thulium 168.934219(5)
Yb ytterbium 173.045(10)
Lu lutetium 174.9668(1)
Hf hafnium 178.486(6)
Ta tantalum 180.94788(2)
W tungsten 183.84(1)
Re rhenium 186.207(1)
Os osmium 190.23(3)
Ir iridium 192.217(2)
Pt platinum 195.084(9)
Au gold 196.966570(4)
Hg mercury 200.592(3)
Tl thallium 204.38(1) [204.382,204.385]
Pb lead 207.2(1.1) [206.14,207.94]
Bi bismuth 208.98040(1)
Th thorium 232.0377(4)
Pa protactinium 231.03588(1)
U uranium 238.02891(3)
`
  .trim()
  .split("\n")
  .map((line) => line.split(" "));
