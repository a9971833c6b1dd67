"""Pronunciations of 4,318 words: phones of ARPAbet, vowels with stress (1 primary, 2 secondary, 0 none).

Data of Carnegie Mellon University's pronouncing dictionary, US English, its first pronunciation of each
word; the licence stands beside this file. Which words, and why these: docs/decisions/dictionary.md.
"""

TEXT = """\
a EY1
ability AH0 B IH1 L AH0 T IY2
able EY1 B AH0 L
about AH0 B AW1 T
above AH0 B AH1 V
absolute AE1 B S AH0 L UW2 T
absolutely AE2 B S AH0 L UW1 T L IY0
accent AH0 K S EH1 N T
accept AE0 K S EH1 P T
acceptable AE0 K S EH1 P T AH0 B AH0 L
accepted AE0 K S EH1 P T IH0 D
access AE1 K S EH2 S
accident AE1 K S AH0 D AH0 N T
according AH0 K AO1 R D IH0 NG
account AH0 K AW1 N T
accounts AH0 K AW1 N T S
accurate AE1 K Y ER0 AH0 T
achieve AH0 CH IY1 V
across AH0 K R AO1 S
act AE1 K T
acting AE1 K T IH0 NG
action AE1 K SH AH0 N
actions AE1 K SH AH0 N Z
active AE1 K T IH0 V
activities AE0 K T IH1 V AH0 T IY0 Z
activity AE0 K T IH1 V AH0 T IY0
actor AE1 K T ER0
actors AE1 K T ER0 Z
actual AE1 K CH AH0 W AH0 L
actually AE1 K CH UW2 AH0 L IY0
ad AE1 D
adam AE1 D AH0 M
add AE1 D
added AE1 D AH0 D
adding AE1 D IH0 NG
addition AH0 D IH1 SH AH0 N
additional AH0 D IH1 SH AH0 N AH0 L
address AE1 D R EH2 S
adds AE1 D Z
administration AE0 D M IH2 N IH0 S T R EY1 SH AH0 N
admit AH0 D M IH1 T
adrian EY1 D R IY0 AH0 N
ads AE1 D Z
adult AH0 D AH1 L T
adults AH0 D AH1 L T S
advance AH0 D V AE1 N S
advanced AH0 D V AE1 N S T
advantage AE0 D V AE1 N T IH0 JH
advertising AE1 D V ER0 T AY2 Z IH0 NG
advice AE0 D V AY1 S
affect AH0 F EH1 K T
affected AH0 F EH1 K T IH0 D
affects AH0 F EH1 K T S
afford AH0 F AO1 R D
africa AE1 F R AH0 K AA0
african AE1 F R AH0 K AH0 N
after AE1 F T ER0
afternoon AE2 F T ER0 N UW1 N
afterwards AE1 F T ER0 W ER0 D Z
again AH0 G EH1 N
against AH0 G EH1 N S T
age EY1 JH
agency EY1 JH AH0 N S IY0
agenda AH0 JH EH1 N D AH0
agent EY1 JH AH0 N T
ages EY1 JH AH0 Z
aggressive AH0 G R EH1 S IH0 V
agnes AE1 G N IH0 S
ago AH0 G OW1
agree AH0 G R IY1
agreed AH0 G R IY1 D
agreement AH0 G R IY1 M AH0 N T
ah AA1
ahead AH0 HH EH1 D
aid EY1 D
aidan EY1 D AA0 N
aim EY1 M
air EH1 R
airing EH1 R IH0 NG
airport EH1 R P AO2 R T
alan AE1 L AH0 N
alarm AH0 L AA1 R M
albert AE1 L B ER0 T
album AE1 L B AH0 M
alcohol AE1 L K AH0 HH AA2 L
alcove AE1 L K OW2 V
alcoves AE1 L K OW2 V Z
alex AE1 L AH0 K S
alexander AE2 L AH0 G Z AE1 N D ER0
alexandra AE2 L EH0 G Z AE1 N D R AH0
alfie AE1 L F IY0
alfred AE1 L F R AH0 D
alice AE1 L AH0 S
alison AE1 L IH0 S AH0 N
alive AH0 L AY1 V
all AO1 L
alley AE1 L IY0
allotment AH0 L AA1 T M AH0 N T
allow AH0 L AW1
allowed AH0 L AW1 D
allowing AH0 L AW1 IH0 NG
allows AH0 L AW1 Z
almost AO1 L M OW2 S T
aloe AE1 L OW2
alone AH0 L OW1 N
along AH0 L AO1 NG
alpha AE1 L F AH0
already AO0 L R EH1 D IY0
alright AO2 L R AY1 T
also AO1 L S OW0
alternative AO0 L T ER1 N AH0 T IH0 V
although AO2 L DH OW1
always AO1 L W EY2 Z
am AE1 M
amanda AH0 M AE1 N D AH0
amazing AH0 M EY1 Z IH0 NG
amber AE1 M B ER0
ambient AE1 M B IY0 AH0 N T
amelia AH0 M IY1 L Y AH0
america AH0 M EH1 R AH0 K AH0
american AH0 M EH1 R AH0 K AH0 N
americans AH0 M EH1 R AH0 K AH0 N Z
among AH0 M AH1 NG
amount AH0 M AW1 N T
amounts AH0 M AW1 N T S
amp AE1 M P
amplifier AE1 M P L AH0 F AY2 ER0
amy EY1 M IY0
an AE1 N
analysis AH0 N AE1 L AH0 S AH0 S
anchor AE1 NG K ER0
and AH0 N D
andrea AE1 N D R IY2 AH0
andrew AE1 N D R UW0
angela AE1 N JH AH0 L AH0
angeles AE1 N JH AH0 L IH0 S
anger AE1 NG G ER0
angry AE1 NG G R IY0
animal AE1 N AH0 M AH0 L
animals AE1 N AH0 M AH0 L Z
ann AE1 N
anna AE1 N AH0
anne AE1 N
annex AE1 N EH2 K S
announced AH0 N AW1 N S T
annoying AH0 N OY1 IH0 NG
annual AE1 N Y UW0 AH0 L
another AH0 N AH1 DH ER0
answer AE1 N S ER0
answers AE1 N S ER0 Z
ant AE1 N T
anthony AE1 N TH AH0 N IY0
anti AE1 N T IY2
anvil AE1 N V AH0 L
any EH1 N IY0
anybody EH1 N IY0 B AH0 D IY0
anymore EH2 N IY0 M AO1 R
anyone EH1 N IY0 W AH2 N
anything EH1 N IY0 TH IH2 NG
anyway EH1 N IY0 W EY2
anyways EH1 N IY0 W EY2 Z
anywhere EH1 N IY0 W EH2 R
apart AH0 P AA1 R T
apartment AH0 P AA1 R T M AH0 N T
app AE1 P
apparently AH0 P EH1 R AH0 N T L IY0
appeal AH0 P IY1 L
appear AH0 P IH1 R
appeared AH0 P IH1 R D
appears AH0 P IH1 R Z
apple AE1 P AH0 L
application AE2 P L AH0 K EY1 SH AH0 N
applied AH0 P L AY1 D
apply AH0 P L AY1
appreciate AH0 P R IY1 SH IY0 EY2 T
approach AH0 P R OW1 CH
appropriate AH0 P R OW1 P R IY0 AH0 T
approved AH0 P R UW1 V D
april EY1 P R AH0 L
apron EY1 P R AH0 N
aquarium AH0 K W EH1 R IY0 AH0 M
arbor AA1 R B ER0
arbour AA1 R B ER0
arcade AA0 R K EY1 D
arch AA1 R CH
arches AA1 R CH AH0 Z
architrave AA1 R K AH0 T R EY2 V
archway AA1 R CH W EY2
are AA1 R
area EH1 R IY0 AH0
areas EH1 R IY0 AH0 Z
argue AA1 R G Y UW0
argument AA1 R G Y AH0 M AH0 N T
arm AA1 R M
armchair AA1 R M CH EH2 R
armed AA1 R M D
armoire AA1 M W AA0 R
armor AA1 R M ER0
armour AA1 R M ER0
arms AA1 R M Z
army AA1 R M IY0
around ER0 AW1 N D
arrested ER0 EH1 S T IH0 D
arrival ER0 AY1 V AH0 L
arrived ER0 AY1 V D
arriving ER0 AY1 V IH0 NG
arrow AE1 R OW0
art AA1 R T
arthur AA1 R TH ER0
article AA1 R T AH0 K AH0 L
artist AA1 R T AH0 S T
artists AA1 R T IH0 S T S
arts AA1 R T S
as AE1 Z
ash AE1 SH
asia EY1 ZH AH0
asian EY1 ZH AH0 N
aside AH0 S AY1 D
ask AE1 S K
asked AE1 S K T
asking AE1 S K IH0 NG
aspect AE1 S P EH2 K T
assets AE1 S EH2 T S
associated AH0 S OW1 S IY0 EY2 T IH0 D
association AH0 S OW2 S IY0 EY1 SH AH0 N
assume AH0 S UW1 M
assuming AH0 S UW1 M IH0 NG
at AE1 T
ate EY1 T
athletes AE1 TH L IY2 T S
atlanta AE0 T L AE1 N T AH0
atmosphere AE1 T M AH0 S F IH2 R
atrium EY1 T R IY0 AH0 M
attack AH0 T AE1 K
attacked AH0 T AE1 K T
attacks AH0 T AE1 K S
attempt AH0 T EH1 M P T
attention AH0 T EH1 N SH AH0 N
attic AE1 T IH0 K
attics AE1 T IH0 K S
attitude AE1 T AH0 T UW2 D
attractive AH0 T R AE1 K T IH0 V
audience AA1 D IY0 AH0 N S
audrey AO1 D R IY0
august AA1 G AH0 S T
aunt AE1 N T
austin AO1 S T AH0 N
australia AO0 S T R EY1 L Y AH0
author AO1 TH ER0
authorities AH0 TH AO1 R AH0 T IY0 Z
authority AH0 TH AO1 R AH0 T IY0
auto AO1 T OW0
automatically AO2 T AH0 M AE1 T IH0 K L IY0
autumn AO1 T AH0 M
available AH0 V EY1 L AH0 B AH0 L
avenue AE1 V AH0 N UW2
average AE1 V ER0 IH0 JH
aviary EY1 V IY0 EH2 R IY0
avoid AH0 V OY1 D
aware AH0 W EH1 R
away AH0 W EY1
awesome AA1 S AH0 M
awful AA1 F AH0 L
awning AA1 N IH0 NG
azalea AH0 Z EY1 L Y AH0
b B IY1
babies B EY1 B IY0 Z
baby B EY1 B IY0
back B AE1 K
background B AE1 K G R AW2 N D
backyard B AE1 K Y AA2 R D
bad B AE1 D
badger B AE1 JH ER0
badly B AE1 D L IY0
bag B AE1 G
bags B AE1 G Z
bakery B EY1 K ER0 IY0
balance B AE1 L AH0 N S
balconies B AE1 L K AH0 N IY0 Z
balcony B AE1 L K AH0 N IY0
ball B AO1 L
ballet B AE0 L EY1
balls B AO1 L Z
bamboo B AE0 M B UW1
ban B AE1 N
band B AE1 N D
bandstand B AE1 N D S T AE2 N D
banister B AE1 N IH0 S T ER0
banjo B AE1 N JH OW2
bank B AE1 NG K
banks B AE1 NG K S
banned B AE1 N D
banner B AE1 N ER0
bannister B AE1 N AH0 S T ER0
bar B AA1 R
barack B AA1 R AH0 K
barbara B AA1 R B ER0 AH0
barbecue B AA1 R B IH0 K Y UW2
barely B EH1 R L IY0
barn B AA1 R N
barns B AA1 R N Z
barnyard B AA1 R N Y AA2 R D
barrel B AE1 R AH0 L
bars B AA1 R Z
base B EY1 S
baseball B EY1 S B AO1 L
based B EY1 S T
basement B EY1 S M AH0 N T
basic B EY1 S IH0 K
basically B EY1 S IH0 K L IY0
basil B AE1 Z AH0 L
basin B EY1 S AH0 N
basis B EY1 S AH0 S
basket B AE1 S K AH0 T
basketball B AE1 S K AH0 T B AO2 L
bath B AE1 TH
bathroom B AE1 TH R UW2 M
bathrooms B AE1 TH R UW2 M Z
bathtub B AE1 TH T AH0 B
battery B AE1 T ER0 IY0
battle B AE1 T AH0 L
battlement B AE1 T AH0 L M AH0 N T
bay B EY1
bays B EY1 Z
be B IY1
beach B IY1 CH
beacon B IY1 K AH0 N
beam B IY1 M
bear B EH1 R
beat B IY1 T
beatrice B IY1 AH0 T R AH0 S
beautiful B Y UW1 T AH0 F AH0 L
beauty B Y UW1 T IY0
became B IH0 K EY1 M
because B IH0 K AO1 Z
become B IH0 K AH1 M
becomes B IH0 K AH1 M Z
becoming B IH0 K AH1 M IH0 NG
bed B EH1 D
bedroom B EH1 D R UW2 M
bedrooms B EH1 D R UW2 M Z
beds B EH1 D Z
bedside B EH1 D S AY2 D
bedtime B EH1 D T AY2 M
bee B IY1
beech B IY1 CH
been B IH1 N
beer B IH1 R
bees B IY1 Z
beetle B IY1 T AH0 L
before B IH0 F AO1 R
began B IH0 G AE1 N
begin B IH0 G IH1 N
beginning B IH0 G IH1 N IH0 NG
begonia B IH0 G OW1 N Y AH0
behavior B IH0 HH EY1 V Y ER0
behind B IH0 HH AY1 N D
beige B EY1 ZH
being B IY1 IH0 NG
belfry B EH1 L F R IY0
belief B IH0 L IY1 F
believe B IH0 L IY1 V
believed B IH0 L IY1 V D
believes B IH0 L IY1 V Z
bell B EH1 L
below B IH0 L OW1
ben B EH1 N
bench B EH1 N CH
benches B EH1 N CH IH0 Z
benefit B EH1 N AH0 F IH0 T
benefits B EH1 N AH0 F IH0 T S
benjamin B EH1 N JH AH0 M AH0 N
bernard B ER0 N AA1 R D
besides B IH0 S AY1 D Z
best B EH1 S T
bet B EH1 T
beta B EY1 T AH0
beth B EH1 TH
better B EH1 T ER0
betty B EH1 T IY0
between B IH0 T W IY1 N
beyond B IH0 AA1 N D
bicycle B AY1 S IH0 K AH0 L
big B IH1 G
bigger B IH1 G ER0
biggest B IH1 G AH0 S T
bike B AY1 K
bill B IH1 L
billiard B IH1 L Y ER0 D
billion B IH1 L Y AH0 N
bills B IH1 L Z
billy B IH1 L IY0
bin B IH1 N
bins B IH1 N Z
birch B ER1 CH
bird B ER1 D
birds B ER1 D Z
birth B ER1 TH
birthday B ER1 TH D EY2
bit B IH1 T
black B L AE1 K
blah B L AA1
blame B L EY1 M
blanket B L AE1 NG K AH0 T
blankets B L AE1 NG K AH0 T S
blender B L EH1 N D ER0
blind B L AY1 N D
blinds B L AY1 N D Z
block B L AA1 K
blocks B L AA1 K S
blood B L AH1 D
blow B L OW1
blue B L UW1
bluebell B L UW1 B EH2 L
board B AO1 R D
boat B OW1 T
boathouse B OW1 T HH AW1 S
boats B OW1 T S
bob B AA1 B
bobby B AA1 B IY0
bodies B AA1 D IY0 Z
body B AA1 D IY0
boiler B OY1 L ER0
boilers B OY1 L ER0 Z
bollard B AA1 L ER0 D
bonus B OW1 N AH0 S
book B UH1 K
bookcase B UH1 K K EY2 S
bookcases B UH1 K K EY2 S IH0 Z
bookends B UH1 K EH2 N D Z
books B UH1 K S
bookshelf B UH1 K SH EH2 L F
bookshelves B UH1 K SH EH2 L V Z
boom B UW1 M
boot B UW1 T
boots B UW1 T S
border B AO1 R D ER0
borders B AO1 R D ER0 Z
bored B AO1 R D
boring B AO1 R IH0 NG
born B AO1 R N
boss B AA1 S
boston B AA1 S T AH0 N
both B OW1 TH
bother B AA1 DH ER0
bottle B AA1 T AH0 L
bottom B AA1 T AH0 M
bought B AA1 T
boulder B OW1 L D ER0
boulders B OW1 L D ER0 Z
bow B AW1
bowl B OW1 L
box B AA1 K S
boxing B AA1 K S IH0 NG
boy B OY1
boyfriend B OY1 F R EH2 N D
boys B OY1 Z
brain B R EY1 N
bramble B R AE1 M B AH0 L
brand B R AE1 N D
bravo B R AA1 V OW0
brazier B R EY1 Z IY0 ER0
break B R EY1 K
breaker B R EY1 K ER0
breakfast B R EH1 K F AH0 S T
breaking B R EY1 K IH0 NG
breaks B R EY1 K S
breath B R EH1 TH
breeze B R IY1 Z
brenda B R EH1 N D AH0
brewery B R UW1 ER0 IY0
brian B R AY1 AH0 N
brick B R IH1 K
bricks B R IH1 K S
bridge B R IH1 JH
bridget B R IH1 JH AH0 T
bright B R AY1 T
brilliant B R IH1 L Y AH0 N T
bring B R IH1 NG
bringing B R IH1 NG IH0 NG
brings B R IH1 NG Z
britain B R IH1 T AH0 N
british B R IH1 T IH0 SH
bro B R OW1
broiler B R OY1 L ER0
broke B R OW1 K
broken B R OW1 K AH0 N
bronze B R AA1 N Z
brook B R UH1 K
broom B R UW1 M
brother B R AH1 DH ER0
brothers B R AH1 DH ER0 Z
brought B R AO1 T
brown B R AW1 N
bruce B R UW1 S
bucket B AH1 K AH0 T
bucks B AH1 K S
buddy B AH1 D IY0
budget B AH1 JH IH0 T
build B IH1 L D
building B IH1 L D IH0 NG
buildings B IH1 L D IH0 NG Z
built B IH1 L T
bulb B AH1 L B
bulbs B AH1 L B Z
bunch B AH1 N CH
bungalow B AH1 NG G AH0 L OW2
bunk B AH1 NG K
bunker B AH1 NG K ER0
bunks B AH1 NG K S
bunting B AH1 N T IH0 NG
bureau B Y UH1 R OW0
burn B ER1 N
burrow B ER1 OW0
bus B AH1 S
bush B UH1 SH
bushes B UH1 SH AH0 Z
business B IH1 Z N AH0 S
businesses B IH1 Z N AH0 S AH0 Z
busy B IH1 Z IY0
but B AH1 T
butterfly B AH1 T ER0 F L AY2
button B AH1 T AH0 N
buttons B AH1 T AH0 N Z
buttress B AH1 T R AH0 S
buy B AY1
buying B AY1 IH0 NG
by B AY1
bye B AY1
c S IY1
cabin K AE1 B AH0 N
cabinet K AE1 B AH0 N AH0 T
cabinets K AE1 B AH0 N AH0 T S
cable K EY1 B AH0 L
cactus K AE1 K T AH0 S
cage K EY1 JH
california K AE2 L AH0 F AO1 R N Y AH0
call K AO1 L
called K AO1 L D
calling K AO1 L IH0 NG
calls K AO1 L Z
calm K AA1 M
came K EY1 M
camera K AE1 M ER0 AH0
cameras K AE1 M ER0 AH0 Z
camp K AE1 M P
campaign K AE0 M P EY1 N
camper K AE1 M P ER0
can K AE1 N
canada K AE1 N AH0 D AH0
canal K AH0 N AE1 L
candelabra K AE2 N D AH0 L AA1 B R AH0
candidate K AE1 N D AH0 D EY0 T
candidates K AE1 N D AH0 D EY0 T S
candle K AE1 N D AH0 L
candlelight K AE1 N D AH0 L L AY2 T
candles K AE1 N D AH0 L Z
cannot K AE1 N AA0 T
canoe K AH0 N UW1
canopy K AE1 N AH0 P IY0
canvas K AE1 N V AH0 S
cap K AE1 P
capable K EY1 P AH0 B AH0 L
capacity K AH0 P AE1 S AH0 T IY0
capital K AE1 P AH0 T AH0 L
captain K AE1 P T AH0 N
car K AA1 R
caravan K AE1 R AH0 V AE2 N
carbon K AA1 R B AH0 N
card K AA1 R D
cards K AA1 R D Z
care K EH1 R
career K ER0 IH1 R
careful K EH1 R F AH0 L
cares K EH1 R Z
carl K AA1 R L
carla K AA1 R L AA0
carlos K AA1 R L OW0 S
carol K AE1 R AH0 L
carolina K EH2 R AH0 L AY1 N AH0
caroline K EH1 R AH0 L AY2 N
carpet K AA1 R P AH0 T
carport K AA1 R P AO2 R T
carriage K AE1 R IH0 JH
carried K AE1 R IY0 D
carry K AE1 R IY0
carrying K AE1 R IY0 IH0 NG
cars K AA1 R Z
cascade K AE0 S K EY1 D
case K EY1 S
cases K EY1 S AH0 Z
cash K AE1 SH
cast K AE1 S T
castle K AE1 S AH0 L
cat K AE1 T
catch K AE1 CH
catherine K AE1 TH ER0 AH0 N
catholic K AE1 TH L IH0 K
cats K AE1 T S
caught K AA1 T
cause K AA1 Z
caused K AA1 Z D
causes K AA1 Z AH0 Z
causing K AA1 Z IH0 NG
cave K EY1 V
cecilia S IH0 S IY1 L Y AH0
cedar S IY1 D ER0
ceiling S IY1 L IH0 NG
ceilings S IY1 L IH0 NG Z
celebrate S EH1 L AH0 B R EY2 T
cell S EH1 L
cellar S EH1 L ER0
cellars S EH1 L ER0 Z
cello CH EH1 L OW0
cells S EH1 L Z
censorship S EH1 N S ER0 SH IH2 P
cent S EH1 N T
center S EH1 N T ER0
central S EH1 N T R AH0 L
centre S EH1 N T ER0
cents S EH1 N T S
century S EH1 N CH ER0 IY0
certain S ER1 T AH0 N
certainly S ER1 T AH0 N L IY0
chain CH EY1 N
chair CH EH1 R
chairs CH EH1 R Z
challenge CH AE1 L AH0 N JH
challenges CH AE1 L AH0 N JH IH0 Z
chance CH AE1 N S
chances CH AE1 N S AH0 Z
chandelier SH AE0 N D AH0 L IH1 R
change CH EY1 N JH
changed CH EY1 N JH D
changes CH EY1 N JH AH0 Z
changing CH EY1 N JH IH0 NG
channel CH AE1 N AH0 L
chapel CH AE1 P AH0 L
character K EH1 R IH0 K T ER0
characters K AE1 R AH0 K T ER0 Z
charge CH AA1 R JH
charged CH AA1 R JH D
charger CH AA1 R JH ER0
charges CH AA1 R JH AH0 Z
charging CH AA1 R JH IH0 NG
charity CH EH1 R IH0 T IY0
charles CH AA1 R L Z
charlie CH AA1 R L IY0
charlotte SH AA1 R L AH0 T
chat CH AE1 T
cheap CH IY1 P
cheaper CH IY1 P ER0
check CH EH1 K
checked CH EH1 K T
checking CH EH1 K IH0 NG
cheese CH IY1 Z
cherry CH EH1 R IY0
chess CH EH1 S
chest CH EH1 S T
chestnut CH EH1 S N AH2 T
chicago SH AH0 K AA1 G OW2
chicken CH IH1 K AH0 N
chickens CH IH1 K AH0 N Z
chief CH IY1 F
child CH AY1 L D
children CH IH1 L D R AH0 N
chime CH AY1 M
chimney CH IH1 M N IY0
chimneys CH IH1 M N IY0 Z
china CH AY1 N AH0
chinese CH AY0 N IY1 Z
chloe K L OW1 IY0
chocolate CH AO1 K L AH0 T
choice CH OY1 S
choices CH OY1 S AH0 Z
choose CH UW1 Z
chose CH OW1 Z
chosen CH OW1 Z AH0 N
chris K R IH1 S
christian K R IH1 S CH AH0 N
christina K R IH0 S T IY1 N AH0
christine K R IH0 S T IY1 N
christmas K R IH1 S M AH0 S
christopher K R IH1 S T AH0 F ER0
church CH ER1 CH
cinema S IH1 N AH0 M AH0
circle S ER1 K AH0 L
circuit S ER1 K AH0 T
circulation S ER1 K Y AH0 L EY2 SH AH0 N
circumstances S ER1 K AH0 M S T AE2 N S AH0 Z
cistern S IH1 S T ER0 N
cities S IH1 T IY0 Z
citizens S IH1 T AH0 Z AH0 N Z
city S IH1 T IY0
civil S IH1 V AH0 L
claim K L EY1 M
claimed K L EY1 M D
claims K L EY1 M Z
claire K L EH1 R
clara K L AE1 R AH0
clare K L EH1 R
clarinet K L EH2 R AH0 N EH1 T
class K L AE1 S
classes K L AE1 S AH0 Z
classic K L AE1 S IH0 K
clay K L EY1
clean K L IY1 N
cleaning K L IY1 N IH0 NG
clear K L IH1 R
clearly K L IH1 R L IY0
click K L IH1 K
client K L AY1 AH0 N T
clients K L AY1 AH0 N T S
cliff K L IH1 F
climate K L AY1 M AH0 T
clive K L AY1 V
cloak K L OW1 K
cloakroom K L OW1 K R UW2 M
clock K L AA1 K
close K L OW1 S
closed K L OW1 Z D
closer K L OW1 S ER0
closet K L AA1 Z AH0 T
closets K L AA1 Z AH0 T S
clothes K L OW1 DH Z
cloud K L AW1 D
clouds K L AW1 D Z
clover K L OW1 V ER0
club K L AH1 B
clubs K L AH1 B Z
clue K L UW1
cluster K L AH1 S T ER0
coach K OW1 CH
coast K OW1 S T
coat K OW1 T
coats K OW1 T S
cobble K AA1 B AH0 L
code K OW1 D
coffee K AA1 F IY0
cold K OW1 L D
colin K OW1 L IH0 N
collapse K AH0 L AE1 P S
colleagues K AA1 L IY0 G Z
collect K AH0 L EH1 K T
collection K AH0 L EH1 K SH AH0 N
college K AA1 L IH0 JH
color K AH1 L ER0
colors K AH1 L ER0 Z
column K AA1 L AH0 M
columns K AA1 L AH0 M Z
com K AA1 M
combat K AA1 M B AE0 T
combination K AA2 M B AH0 N EY1 SH AH0 N
come K AH1 M
comedy K AA1 M AH0 D IY0
comes K AH1 M Z
comet K AA1 M AH0 T
comfortable K AH1 M F ER0 T AH0 B AH0 L
coming K AH1 M IH0 NG
comment K AA1 M EH0 N T
comments K AA1 M EH0 N T S
commercial K AH0 M ER1 SH AH0 L
commission K AH0 M IH1 SH AH0 N
commit K AH0 M IH1 T
commitment K AH0 M IH1 T M AH0 N T
committed K AH0 M IH1 T IH0 D
committee K AH0 M IH1 T IY0
common K AA1 M AH0 N
communication K AH0 M Y UW2 N AH0 K EY1 SH AH0 N
communities K AH0 M Y UW1 N AH0 T IY0 Z
community K AH0 M Y UW1 N AH0 T IY0
companies K AH1 M P AH0 N IY2 Z
company K AH1 M P AH0 N IY2
compare K AH0 M P EH1 R
compared K AH0 M P EH1 R D
comparison K AH0 M P EH1 R AH0 S AH0 N
compass K AH1 M P AH0 S
compete K AH0 M P IY1 T
competition K AA2 M P AH0 T IH1 SH AH0 N
competitive K AH0 M P EH1 T AH0 T IH0 V
complain K AH0 M P L EY1 N
complete K AH0 M P L IY1 T
completed K AH0 M P L IY1 T AH0 D
completely K AH0 M P L IY1 T L IY0
complex K AA1 M P L EH0 K S
complicated K AA1 M P L AH0 K EY2 T AH0 D
compost K AA1 M P OW0 S T
compressor K AH0 M P R EH1 S ER0
computer K AH0 M P Y UW1 T ER0
computers K AH0 M P Y UW1 T ER0 Z
concept K AA1 N S EH0 P T
concern K AH0 N S ER1 N
concerned K AH0 N S ER1 N D
concerns K AH0 N S ER1 N Z
condition K AH0 N D IH1 SH AH0 N
conditioner K AH0 N D IH1 SH AH0 N ER0
conditioning K AH0 N D IH1 SH AH0 N IH0 NG
conditions K AH0 N D IH1 SH AH0 N Z
conference K AA1 N F ER0 AH0 N S
confidence K AA1 N F AH0 D AH0 N S
confident K AA1 N F AH0 D AH0 N T
confirm K AH0 N F ER1 M
confirmed K AH0 N F ER1 M D
conflict K AA1 N F L IH0 K T
confused K AH0 N F Y UW1 Z D
congress K AA1 NG G R AH0 S
connect K AH0 N EH1 K T
connected K AH0 N EH1 K T IH0 D
connection K AH0 N EH1 K SH AH0 N
connor K AA1 N ER0
consequences K AA1 N S AH0 K W EH2 N S AH0 Z
conservative K AH0 N S ER1 V AH0 T IH0 V
conservatory K AH0 N S ER1 V AH0 T AO0 R IY0
consider K AH0 N S IH1 D ER0
considered K AH0 N S IH1 D ER0 D
considering K AH0 N S IH1 D ER0 IH0 NG
console K AA1 N S OW0 L
constant K AA1 N S T AH0 N T
constantly K AA1 N S T AH0 N T L IY0
construction K AH0 N S T R AH1 K SH AH0 N
consumer K AH0 N S UW1 M ER0
consumers K AH0 N S UW1 M ER0 Z
contact K AA1 N T AE2 K T
content K AA1 N T EH0 N T
context K AA1 N T EH0 K S T
continue K AH0 N T IH1 N Y UW0
continued K AH0 N T IH1 N Y UW0 D
continues K AH0 N T IH1 N Y UW0 Z
contract K AA1 N T R AE2 K T
control K AH0 N T R OW1 L
controller K AH0 N T R OW1 L ER0
conversation K AA2 N V ER0 S EY1 SH AH0 N
convinced K AH0 N V IH1 N S T
cook K UH1 K
cooker K UH1 K ER0
cooking K UH1 K IH0 NG
cool K UW1 L
cooler K UW1 L ER0
cooling K UW1 L IH0 NG
coop K UW1 P
cop K AA1 P
copper K AA1 P ER0
copy K AA1 P IY0
core K AO1 R
corner K AO1 R N ER0
corporate K AO1 R P ER0 AH0 T
corral K ER0 AE1 L
correct K ER0 EH1 K T
corridor K AO1 R AH0 D ER0
corridors K AO1 R IH0 D ER0 Z
cost K AA1 S T
costs K AA1 S T S
cosy K OW1 Z IY0
cot K AA1 T
cottage K AA1 T AH0 JH
couch K AW1 CH
could K UH1 D
council K AW1 N S AH0 L
count K AW1 N T
counter K AW1 N T ER0
countertop K AW1 N T ER0 T AA2 P
countries K AH1 N T R IY0 Z
country K AH1 N T R IY0
county K AW1 N T IY0
couple K AH1 P AH0 L
course K AO1 R S
court K AO1 R T
courtyard K AO1 R T Y AA2 R D
cousin K AH1 Z AH0 N
cove K OW1 V
cover K AH1 V ER0
coverage K AH1 V ER0 AH0 JH
covered K AH1 V ER0 D
coves K OW1 V Z
cozy K OW1 Z IY0
cradle K R EY1 D AH0 L
craft K R AE1 F T
craig K R EY1 G
crane K R EY1 N
crash K R AE1 SH
crate K R EY1 T
crazy K R EY1 Z IY0
cream K R IY1 M
create K R IY0 EY1 T
created K R IY0 EY1 T AH0 D
creating K R IY0 EY1 T IH0 NG
creative K R IY0 EY1 T IH0 V
credit K R EH1 D AH0 T
creek K R IY1 K
crescent K R EH1 S AH0 N T
crew K R UW1
crib K R IH1 B
crime K R AY1 M
criminal K R IH1 M AH0 N AH0 L
crimson K R IH1 M Z AH0 N
crisis K R AY1 S AH0 S
critical K R IH1 T IH0 K AH0 L
crocus K R OW1 K AH0 S
cross K R AO1 S
crossing K R AO1 S IH0 NG
crow K R OW1
crowd K R AW1 D
crown K R AW1 N
cry K R AY1
crying K R AY1 IH0 NG
crypt K R IH1 P T
cultural K AH1 L CH ER0 AH0 L
culture K AH1 L CH ER0
cup K AH1 P
cupboard K AH1 B ER0 D
cupboards K AH1 B ER0 D Z
cupola K AH0 P OW1 L AH0
curb K ER1 B
curious K Y UH1 R IY0 AH0 S
current K ER1 AH0 N T
currently K ER1 AH0 N T L IY0
curtain K ER1 T AH0 N
curtains K ER1 T AH0 N Z
custom K AH1 S T AH0 M
customer K AH1 S T AH0 M ER0
customers K AH1 S T AH0 M ER0 Z
cut K AH1 T
cute K Y UW1 T
cuts K AH1 T S
cutting K AH1 T IH0 NG
cyan S AY0 AE1 N
cycle S AY1 K AH0 L
cylinder S IH1 L AH0 N D ER0
cypress S AY1 P R AH0 S
d D IY1
da D AA1
dad D AE1 D
daddy D AE1 D IY0
dado D EY1 D OW2
daffodil D AE1 F AH0 D IH2 L
daily D EY1 L IY0
dairy D EH1 R IY0
dais D EY1 Z
daisy D EY1 Z IY0
dallas D AE1 L AH0 S
damage D AE1 M AH0 JH
damp D AE1 M P
dan D AE1 N
dance D AE1 N S
danger D EY1 N JH ER0
dangerous D EY1 N JH ER0 AH0 S
daniel D AE1 N Y AH0 L
daphne D AE1 F N IY0
dark D AA1 R K
darkroom D AA1 R K R UW2 M
darts D AA1 R T S
data D EY1 T AH0
date D EY1 T
dating D EY1 T IH0 NG
daughter D AO1 T ER0
david D EY1 V IH0 D
dawn D AO1 N
day D EY1
daylight D EY1 L AY2 T
days D EY1 Z
de D IY1
dead D EH1 D
deal D IY1 L
dealing D IY1 L IH0 NG
deals D IY1 L Z
dear D IH1 R
death D EH1 TH
deaths D EH1 TH S
debate D AH0 B EY1 T
deborah D EH1 B ER0 AH0
debt D EH1 T
decade D EH0 K EY1 D
decades D EH0 K EY1 D Z
december D IH0 S EH1 M B ER0
decent D IY1 S AH0 N T
decide D IH2 S AY1 D
decided D IH2 S AY1 D IH0 D
decision D IH0 S IH1 ZH AH0 N
decisions D IH0 S IH1 ZH AH0 N Z
deck D EH1 K
decking D EH1 K IH0 NG
decline D IH0 K L AY1 N
deep D IY1 P
deer D IH1 R
defend D IH0 F EH1 N D
defense D IH0 F EH1 N S
definitely D EH1 F AH0 N AH0 T L IY0
definition D EH2 F AH0 N IH1 SH AH0 N
degree D IH0 G R IY1
degrees D IH0 G R IY1 Z
dehumidifier D IY0 HH Y UW0 M IH1 D AH0 F AY0 ER0
deliver D IH0 L IH1 V ER0
delta D EH1 L T AH0
demand D IH0 M AE1 N D
democracy D IH0 M AA1 K R AH0 S IY0
democratic D EH2 M AH0 K R AE1 T IH0 K
den D EH1 N
dennis D EH1 N IH0 S
dens D EH1 N Z
department D IH0 P AA1 R T M AH0 N T
departure D IH0 P AA1 R CH ER0
depend D IH0 P EH1 N D
depending D IH0 P EH1 N D IH0 NG
depends D IH0 P EH1 N D Z
depression D IH0 P R EH1 SH AH0 N
describe D IH0 S K R AY1 B
described D IH0 S K R AY1 B D
desert D EH1 Z ER0 T
deserve D IH0 Z ER1 V
design D IH0 Z AY1 N
designed D IH0 Z AY1 N D
desire D IH0 Z AY1 ER0
desk D EH1 S K
despite D IH0 S P AY1 T
destroy D IH0 S T R OY1
destroyed D IH0 S T R OY1 D
destruction D IH0 S T R AH1 K SH AH0 N
detail D IH0 T EY1 L
details D IH0 T EY1 L Z
detector D IH0 T EH1 K T ER0
determine D AH0 T ER1 M AH0 N
determined D IH0 T ER1 M AH0 N D
develop D IH0 V EH1 L AH0 P
developed D IH0 V EH1 L AH0 P T
developing D IH0 V EH1 L AH0 P IH0 NG
development D IH0 V EH1 L AH0 P M AH0 N T
device D IH0 V AY1 S
devices D IH0 V AY1 S AH0 Z
diamond D AY1 M AH0 N D
diana D AY0 AE1 N AH0
diane D AY0 AE1 N
did D IH1 D
die D AY1
diet D AY1 AH0 T
difference D IH1 F ER0 AH0 N S
differences D IH1 F ER0 AH0 N S IH0 Z
different D IH1 F ER0 AH0 N T
differently D IH1 F R AH0 N T L IY0
difficult D IH1 F AH0 K AH0 L T
digital D IH1 JH AH0 T AH0 L
dim D IH1 M
dimmer D IH1 M ER0
dining D AY1 N IH0 NG
dinner D IH1 N ER0
dinosaur D AY1 N AH0 S AO2 R
direct D ER0 EH1 K T
direction D ER0 EH1 K SH AH0 N
directly D ER0 EH1 K T L IY0
director D ER0 EH1 K T ER0
dirty D ER1 T IY0
disagree D IH0 S AH0 G R IY1
disappointed D IH2 S AH0 P OY1 N T IH0 D
disaster D IH0 Z AE1 S T ER0
disco D IH1 S K OW0
discovered D IH0 S K AH1 V ER0 D
discuss D IH0 S K AH1 S
discussion D IH0 S K AH1 SH AH0 N
disease D IH0 Z IY1 Z
dishwasher D IH1 SH W AA2 SH ER0
display D IH0 S P L EY1
distance D IH1 S T AH0 N S
district D IH1 S T R IH0 K T
divorce D IH0 V AO1 R S
divorced D IH0 V AO1 R S T
do D UW1
dock D AA1 K
doctor D AA1 K T ER0
doctors D AA1 K T ER0 Z
does D AH1 Z
dog D AO1 G
dogs D AA1 G Z
doing D UW1 IH0 NG
doll D AA1 L
dollar D AA1 L ER0
dollars D AA1 L ER0 Z
dolls D AA1 L Z
dolphin D AA1 L F AH0 N
dome D OW1 M
domes D OW1 M Z
domestic D AH0 M EH1 S T IH0 K
dominic D AA1 M AH0 N IH0 K
donald D AA1 N AH0 L D
done D AH1 N
donna D AA1 N AH0
door D AO1 R
doorbell D AO1 R B EH2 L
doormat D AO1 R M AE2 T
doors D AO1 R Z
doorway D AO1 R W EY2
doris D AO1 R AH0 S
dorm D AO1 R M
dormer D AO1 R M ER0
dorothy D AO1 R AH0 TH IY0
dot D AA1 T
double D AH1 B AH0 L
doubt D AW1 T
douglas D AH1 G L AH0 S
dove D AH1 V
down D AW1 N
download D AW1 N L OW2 D
downstairs D AW1 N S T EH1 R Z
downtown D AW1 N T AW1 N
dozen D AH1 Z AH0 N
dr D R AY1 V
dragon D R AE1 G AH0 N
drain D R EY1 N
drama D R AA1 M AH0
drape D R EY1 P
drapes D R EY1 P S
draw D R AO1
drawer D R AO1 R
drawers D R AO1 R Z
drawing D R AO1 IH0 NG
drawn D R AO1 N
dream D R IY1 M
dreams D R IY1 M Z
dress D R EH1 S
dresser D R EH1 S ER0
dressing D R EH1 S IH0 NG
drill D R IH1 L
drink D R IH1 NG K
drinking D R IH1 NG K IH0 NG
drive D R AY1 V
driven D R IH1 V AH0 N
driver D R AY1 V ER0
drivers D R AY1 V ER0 Z
driveway D R AY1 V W EY2
driving D R AY1 V IH0 NG
drop D R AA1 P
dropped D R AA1 P T
drove D R OW1 V
drug D R AH1 G
drum D R AH1 M
drums D R AH1 M Z
dry D R AY1
dryer D R AY1 ER0
drying D R AY1 IH0 NG
duck D AH1 K
dude D UW1 D
due D UW1
dumb D AH1 M
duncan D AH1 NG K AH0 N
dune D UW1 N
dungeon D AH1 N JH AH0 N
during D UH1 R IH0 NG
dusk D AH1 S K
duster D AH1 S T ER0
duty D UW1 T IY0
dying D AY1 IH0 NG
dylan D IH1 L AH0 N
e IY1
each IY1 CH
eagle IY1 G AH0 L
earlier ER1 L IY0 ER0
early ER1 L IY0
earn ER1 N
earth ER1 TH
easel IY1 Z AH0 L
easier IY1 Z IY0 ER0
easily IY1 Z AH0 L IY0
east IY1 S T
easter IY1 S T ER0
eastern IY1 S T ER0 N
easy IY1 Z IY0
eat IY1 T
eating IY1 T IH0 NG
eaves IY1 V Z
echo EH1 K OW0
economic EH2 K AH0 N AA1 M IH0 K
economy IH0 K AA1 N AH0 M IY0
edge EH1 JH
edit EH1 D AH0 T
edith IY1 D IH0 TH
education EH2 JH AH0 K EY1 SH AH0 N
edward EH1 D W ER0 D
effect IH0 F EH1 K T
effective IH0 F EH1 K T IH0 V
effects IH0 F EH1 K T S
efficient IH0 F IH1 SH AH0 N T
effort EH1 F ER0 T
efforts EH1 F ER0 T S
egg EH1 G
eggs EH1 G Z
eh EH1
eight EY1 T
eighteen EY0 T IY1 N
eighteenth EY0 T IY1 N TH
eighth EY1 T TH
eightieth EY1 T IY0 IH0 TH
eighty EY1 T IY0
eileen AY0 L IY1 N
either IY1 DH ER0
el EH1 L
eleanor EH1 L AH0 N AO0 R
elected IH0 L EH1 K T AH0 D
election IH0 L EH1 K SH AH0 N
elections IH0 L EH1 K SH AH0 N Z
electric IH0 L EH1 K T R IH0 K
electricity IH0 L EH2 K T R IH1 S AH0 T IY0
elena EH1 L AH0 N AA0
elephant EH1 L AH0 F AH0 N T
elevator EH1 L AH0 V EY2 T ER0
eleven IH0 L EH1 V AH0 N
eleventh IH0 L EH1 V AH0 N TH
elizabeth IH0 L IH1 Z AH0 B AH0 TH
elk EH1 L K
ella EH1 L AH0
ellen EH1 L AH0 N
elliot EH1 L IY0 AH0 T
elm EH1 L M
else EH1 L S
elsewhere EH1 L S W EH2 R
em EH1 M
email IY0 M EY1 L
emerald EH1 M R AH0 L D
emergency IH0 M ER1 JH AH0 N S IY0
emily EH1 M IH0 L IY0
emissions IH0 M IH1 SH AH0 N Z
emma EH1 M AH0
emotional IH0 M OW1 SH AH0 N AH0 L
employees EH0 M P L OY1 IY0 Z
empty EH1 M P T IY0
en EH1 N
encourage EH0 N K ER1 IH0 JH
end EH1 N D
ended EH1 N D AH0 D
ending EH1 N D IH0 NG
ends EH1 N D Z
enemies EH1 N AH0 M IY0 Z
enemy EH1 N AH0 M IY0
energy EH1 N ER0 JH IY0
engine EH1 N JH AH0 N
engineering EH1 N JH AH0 N IH1 R IH0 NG
england IH1 NG G L AH0 N D
english IH1 NG G L IH0 SH
enjoy EH2 N JH OY1
enjoyed EH2 N JH OY1 D
enjoying EH2 N JH OY1 IH0 NG
enough IH0 N AH1 F
ensure EH0 N SH UH1 R
enter EH1 N T ER0
entertainment EH2 N T ER0 T EY1 N M AH0 N T
entire IH0 N T AY1 ER0
entirely IH0 N T AY1 ER0 L IY0
entrance EH1 N T R AH0 N S
entry EH1 N T R IY0
environment IH0 N V AY1 R AH0 N M AH0 N T
environmental IH0 N V AY2 R AH0 N M EH1 N T AH0 L
episode EH1 P AH0 S OW2 D
equal IY1 K W AH0 L
equipment IH0 K W IH1 P M AH0 N T
equivalent IH0 K W IH1 V AH0 L AH0 N T
er ER0
era EH1 R AH0
eric EH1 R IH0 K
erica EH1 R IH0 K AH0
ernest ER1 N AH0 S T
error EH1 R ER0
es EH1 S
escalator EH1 S K AH0 L EY2 T ER0
escape IH0 S K EY1 P
especially AH0 S P EH1 SH L IY0
essentially EH0 S EH1 N SH AH0 L IY0
established IH0 S T AE1 B L IH0 SH T
estate IH0 S T EY1 T
estimated EH1 S T AH0 M EY2 T AH0 D
etc EH2 T S EH1 T ER0 AH0
ethan IY1 TH AH0 N
europe Y UH1 R AH0 P
european Y UH2 R AH0 P IY1 AH0 N
eva EY1 V AH0
evan EH1 V AH0 N
evelyn EH1 V AH0 L AH0 N
even IY1 V IH0 N
evening IY1 V N IH0 NG
event IH0 V EH1 N T
events IH0 V EH1 N T S
eventually IH0 V EH1 N CH AH0 W AH0 L IY0
ever EH1 V ER0
every EH1 V ER0 IY0
everybody EH1 V R IY0 B AA2 D IY0
everyday EH1 V R IY0 D EY1
everyone EH1 V R IY0 W AH2 N
everything EH1 V R IY0 TH IH2 NG
everywhere EH1 V R IY0 W EH2 R
evidence EH1 V AH0 D AH0 N S
evil IY1 V AH0 L
ex EH1 K S
exact IH0 G Z AE1 K T
exactly IH0 G Z AE1 K T L IY0
example IH0 G Z AE1 M P AH0 L
examples IH0 G Z AE1 M P AH0 L Z
excellent EH1 K S AH0 L AH0 N T
except IH0 K S EH1 P T
exchange IH0 K S CH EY1 N JH
excited IH0 K S AY1 T AH0 D
exciting IH0 K S AY1 T IH0 NG
excuse IH0 K S K Y UW1 S
executive IH0 G Z EH1 K Y AH0 T IH0 V
exercise EH1 K S ER0 S AY2 Z
exist IH0 G Z IH1 S T
existence EH0 G Z IH1 S T AH0 N S
existing IH0 G Z IH1 S T IH0 NG
exists IH0 G Z IH1 S T S
expect IH0 K S P EH1 K T
expected IH0 K S P EH1 K T AH0 D
expecting IH0 K S P EH1 K T IH0 NG
expensive IH0 K S P EH1 N S IH0 V
experience IH0 K S P IH1 R IY0 AH0 N S
experienced IH0 K S P IH1 R IY0 AH0 N S T
experiences IH0 K S P IH1 R IY0 AH0 N S IH0 Z
expert EH1 K S P ER0 T
experts EH1 K S P ER0 T S
explain IH0 K S P L EY1 N
explained IH0 K S P L EY1 N D
explanation EH2 K S P L AH0 N EY1 SH AH0 N
exposed IH0 K S P OW1 Z D
express IH0 K S P R EH1 S
extended IH0 K S T EH1 N D AH0 D
extension IH0 K S T EH1 N SH AH0 N
extent IH0 K S T EH1 N T
exterior IH0 K S T IH1 R IY0 ER0
external IH0 K S T ER1 N AH0 L
extra EH1 K S T R AH0
extract EH1 K S T R AE2 K T
extreme EH0 K S T R IY1 M
extremely EH0 K S T R IY1 M L IY0
eye AY1
eyes AY1 Z
f EH1 F
face F EY1 S
faces F EY1 S AH0 Z
facing F EY1 S IH0 NG
fact F AE1 K T
factor F AE1 K T ER0
factors F AE1 K T ER0 Z
factory F AE1 K T ER0 IY0
facts F AE1 K T S
fail F EY1 L
failed F EY1 L D
failure F EY1 L Y ER0
fair F EH1 R
fairly F EH1 R L IY0
fairy F EH1 R IY0
faith F EY1 TH
fake F EY1 K
falcon F AE1 L K AH0 N
fall F AO1 L
fallen F AA1 L AH0 N
falling F AA1 L IH0 NG
falls F AO1 L Z
false F AO1 L S
familiar F AH0 M IH1 L Y ER0
families F AE1 M AH0 L IY0 Z
family F AE1 M AH0 L IY0
famous F EY1 M AH0 S
fan F AE1 N
fans F AE1 N Z
fantastic F AE0 N T AE1 S T IH0 K
fantasy F AE1 N T AH0 S IY0
far F AA1 R
farm F AA1 R M
farmyard F AA1 R M Y AA2 R D
fashion F AE1 SH AH0 N
fast F AE1 S T
faster F AE1 S T ER0
fat F AE1 T
father F AA1 DH ER0
faucet F AO1 S AH0 T
faucets F AO1 S AH0 T S
fault F AO1 L T
favor F EY1 V ER0
favorite F EY1 V ER0 IH0 T
fear F IH1 R
feature F IY1 CH ER0
features F IY1 CH ER0 Z
february F EH1 B Y AH0 W EH2 R IY0
fed F EH1 D
federal F EH1 D ER0 AH0 L
fee F IY1
feed F IY1 D
feeder F IY1 D ER0
feel F IY1 L
feeling F IY1 L IH0 NG
feelings F IY1 L IH0 NG Z
feels F IY1 L Z
feet F IY1 T
felix F IY1 L IH0 K S
fell F EH1 L
fellow F EH1 L OW0
felt F EH1 L T
female F IY1 M EY2 L
fence F EH1 N S
fender F EH1 N D ER0
fern F ER1 N
ferns F ER1 N Z
festoon F EH2 S T UW1 N
few F Y UW1
fewer F Y UW1 ER0
field F IY1 L D
fifteen F IH0 F T IY1 N
fifteenth F IH0 F T IY1 N TH
fifth F IH1 F TH
fiftieth F IH1 F T IY0 IH0 TH
fifty F IH1 F T IY0
fig F IH1 G
fight F AY1 T
fighting F AY1 T IH0 NG
figure F IH1 G Y ER0
figured F IH1 G Y ER0 D
figures F IH1 G Y ER0 Z
filament F IH1 L AH0 M AH0 N T
file F AY1 L
fill F IH1 L
filled F IH1 L D
film F IH1 L M
films F IH1 L M Z
filter F IH1 L T ER0
final F AY1 N AH0 L
finally F AY1 N AH0 L IY0
finance F AH0 N AE1 N S
financial F AH0 N AE1 N SH AH0 L
finch F IH1 N CH
find F AY1 N D
finding F AY1 N D IH0 NG
fine F AY1 N
finger F IH1 NG G ER0
fingers F IH1 NG G ER0 Z
finish F IH1 N IH0 SH
finished F IH1 N IH0 SH T
fiona F IY0 OW1 N AH0
fire F AY1 ER0
fired F AY1 ER0 D
fireplace F AY1 ER0 P L EY2 S
fireplaces F AY1 ER0 P L EY2 S AH0 Z
firm F ER1 M
first F ER1 S T
fish F IH1 SH
fit F IH1 T
fitting F IH1 T IH0 NG
fittings F IH1 T IH0 NG Z
five F AY1 V
fix F IH1 K S
fixed F IH1 K S T
fixture F IH1 K S CH ER0
flag F L AE1 G
flare F L EH1 R
flash F L AE1 SH
flat F L AE1 T
flicker F L IH1 K ER0
flight F L AY1 T
flood F L AH1 D
floodlight F L AH1 D L AY2 T
floor F L AO1 R
floors F L AO1 R Z
florence F L AO1 R AH0 N S
florida F L AO1 R AH0 D AH0
flow F L OW1
flower F L AW1 ER0
flowers F L AW1 ER0 Z
flu F L UW1
fluorescent F L UH2 R EH1 S AH0 N T
flute F L UW1 T
fly F L AY1
flying F L AY1 IH0 NG
focus F OW1 K AH0 S
focused F OW1 K AH0 S T
fog F AA1 G
folding F OW1 L D IH0 NG
folks F OW1 K S
follow F AA1 L OW0
followed F AA1 L OW0 D
following F AA1 L OW0 IH0 NG
food F UW1 D
foot F UH1 T
football F UH1 T B AO2 L
footpath F UH1 T P AE2 TH
for F AO1 R
force F AO1 R S
forced F AO1 R S T
forces F AO1 R S IH0 Z
foreign F AO1 R AH0 N
forest F AO1 R AH0 S T
forever F ER0 EH1 V ER0
forge F AO1 R JH
forget F ER0 G EH1 T
forgot F ER0 G AA1 T
form F AO1 R M
former F AO1 R M ER0
forms F AO1 R M Z
forth F AO1 R TH
fortieth F AO1 R T IY0 IH0 TH
forty F AO1 R T IY0
forward F AO1 R W ER0 D
fought F AO1 T
found F AW1 N D
foundation F AW0 N D EY1 SH AH0 N
fountain F AW1 N T AH0 N
four F AO1 R
fourteen F AO1 R T IY1 N
fourteenth F AO1 R T IY1 N TH
fourth F AO1 R TH
fox F AA1 K S
foxglove F AA1 K S G L AH2 V
foxtrot F AA1 K S T R AA0 T
foyer F OY1 ER0
frame F R EY1 M
france F R AE1 N S
frances F R AE1 N S IH0 S
francis F R AE1 N S AH0 S
francisco F R AE0 N S IH1 S K OW0
frank F R AE1 NG K
fred F R EH1 D
freddie F R EH1 D IY0
free F R IY1
freedom F R IY1 D AH0 M
freezer F R IY1 Z ER0
french F R EH1 N CH
fresh F R EH1 SH
freya F R EY1 AH0
friday F R AY1 D IY0
fridge F R IH1 JH
friend F R EH1 N D
friendly F R EH1 N D L IY0
friends F R EH1 N D Z
friendship F R EH1 N D SH IH0 P
frog F R AA1 G
from F R AH1 M
front F R AH1 N T
frost F R AO1 S T
fuel F Y UW1 AH0 L
full F UH1 L
fully F UH1 L IY0
fun F AH1 N
function F AH1 NG K SH AH0 N
fund F AH1 N D
funding F AH1 N D IH0 NG
funds F AH1 N D Z
funny F AH1 N IY0
furnace F ER1 N AH0 S
furniture F ER1 N IH0 CH ER0
further F ER1 DH ER0
futon F UW1 T AA0 N
future F Y UW1 CH ER0
g JH IY1
gable G EY1 B AH0 L
gain G EY1 N
galaxy G AE1 L AH0 K S IY0
gallery G AE1 L ER0 IY0
galley G AE1 L IY0
game G EY1 M
games G EY1 M Z
gaming G EY1 M IH0 NG
gamma G AE1 M AH0
gap G AE1 P
garage G ER0 AA1 ZH
garages G ER0 AA1 ZH IH0 Z
garbage G AA1 R B IH0 JH
garden G AA1 R D AH0 N
gardens G AA1 R D AH0 N Z
gareth G EH1 R IH0 TH
garland G AA1 R L AH0 N D
gary G EH1 R IY0
gas G AE1 S
gate G EY1 T
gates G EY1 T S
gateway G EY1 T W EY2
gauge G EY1 JH
gave G EY1 V
gavin G AE1 V IH0 N
gazebo G AH0 Z IY1 B OW0
gear G IH1 R
gender JH EH1 N D ER0
general JH EH1 N ER0 AH0 L
generally JH EH1 N ER0 AH0 L IY0
generation JH EH2 N ER0 EY1 SH AH0 N
george JH AO1 R JH
georgia JH AO1 R JH AH0
gerald JH EH1 R AH0 L D
geranium JH ER0 EY1 N IY0 AH0 M
german JH ER1 M AH0 N
germany JH ER1 M AH0 N IY0
get G EH1 T
gets G EH1 T S
getting G EH1 T IH0 NG
geyser G AY1 Z ER0
giant JH AY1 AH0 N T
gift G IH1 F T
giraffe JH ER0 AE1 F
girl G ER1 L
girlfriend G ER1 L F R EH2 N D
girls G ER1 L Z
give G IH1 V
given G IH1 V AH0 N
gives G IH1 V Z
giving G IH1 V IH0 NG
glad G L AE1 D
glade G L EY1 D
glass G L AE1 S
glazing G L EY1 Z IH0 NG
gleam G L IY1 M
glimmer G L IH1 M ER0
glint G L IH1 N T
global G L OW1 B AH0 L
globe G L OW1 B
gloria G L AO1 R IY0 AH0
glove G L AH1 V
gloves G L AH1 V Z
glow G L OW1
glue G L UW1
go G OW1
goal G OW1 L
goals G OW1 L Z
goes G OW1 Z
going G OW1 IH0 NG
gold G OW1 L D
golden G OW1 L D AH0 N
golf G AA1 L F
gone G AO1 N
good G UH1 D
goodbye G UH2 D B AY1
goodness G UH1 D N AH0 S
goodnight G UH1 D N AY2 T
goose G UW1 S
gordon G AO1 R D AH0 N
gosh G AA1 SH
got G AA1 T
gotten G AA1 T AH0 N
government G AH1 V ER0 M AH0 N T
governments G AH1 V ER0 M AH0 N T S
governor G AH1 V ER0 N ER0
grab G R AE1 B
grace G R EY1 S
grade G R EY1 D
graduate G R AE1 JH AH0 W AH0 T
graduated G R AE1 JH UW0 EY2 T IH0 D
graham G R EY1 AH0 M
grand G R AE1 N D
grandad G R AE1 N D AE2 D
grandfather G R AE1 N D F AA2 DH ER0
grandma G R AE1 N D M AA0
grandmother G R AE1 N D M AH2 DH ER0
grandpa G R AE1 N D P AA2
grandparents G R AE1 N D P EH2 R AH0 N T S
granite G R AE1 N AH0 T
granny G R AE1 N IY0
granted G R AE1 N T AH0 D
grass G R AE1 S
gravel G R AE1 V AH0 L
gray G R EY1
great G R EY1 T
greater G R EY1 T ER0
greatest G R EY1 T AH0 S T
green G R IY1 N
greenhouse G R IY1 N HH AW2 S
greta G R IY1 T AH0
grew G R UW1
grey G R EY1
grill G R IH1 L
grinder G R AY1 N D ER0
gross G R OW1 S
grotto G R AA1 T OW2
ground G R AW1 N D
group G R UW1 P
groups G R UW1 P S
grove G R OW1 V
grow G R OW1
growing G R OW1 IH0 NG
grown G R OW1 N
growth G R OW1 TH
guarantee G EH2 R AH0 N T IY1
guard G AA1 R D
guardian G AA1 R D IY0 AH0 N
guess G EH1 S
guest G EH1 S T
guests G EH1 S T S
guide G AY1 D
guilty G IH1 L T IY0
guitar G IH0 T AA1 R
gutter G AH1 T ER0
gutters G AH1 T ER0 Z
guy G AY1
guys G AY1 Z
gwen G W EH1 N
gym JH IH1 M
h EY1 CH
ha HH AA1
habit HH AE1 B AH0 T
had HH AE1 D
hair HH EH1 R
half HH AE1 F
hall HH AO1 L
halls HH AO1 L Z
hallway HH AO1 L W EY2
halo HH EY1 L OW0
halogen HH AE1 L AH0 JH AH0 N
hammock HH AE1 M AH0 K
hamper HH AE1 M P ER0
hand HH AE1 N D
handle HH AE1 N D AH0 L
handrail HH AE1 N D R EY2 L
hands HH AE1 N D Z
hang HH AE1 NG
hanger HH AE1 NG ER0
hanging HH AE1 NG IH0 NG
hannah HH AE1 N AH0
happen HH AE1 P AH0 N
happened HH AE1 P AH0 N D
happening HH AE1 P AH0 N IH0 NG
happens HH AE1 P AH0 N Z
happy HH AE1 P IY0
harbor HH AA1 R B ER0
harbour HH AA1 R B ER0
hard HH AA1 R D
harder HH AA1 R D ER0
hardly HH AA1 R D L IY0
hardware HH AA1 R D W EH2 R
harm HH AA1 R M
harold HH EH1 R AH0 L D
harp HH AA1 R P
harriet HH EH1 R IY0 AH0 T
harry HH EH1 R IY0
has HH AE1 Z
hat HH AE1 T
hatch HH AE1 CH
have HH AE1 V
having HH AE1 V IH0 NG
hawk HH AO1 K
hay HH EY1
hazel HH EY1 Z AH0 L
he HH IY1
head HH EH1 D
headboard HH EH1 D B AO2 R D
headed HH EH1 D AH0 D
heads HH EH1 D Z
health HH EH1 L TH
healthcare HH EH1 L TH K EH2 R
healthy HH EH1 L TH IY0
hear HH IY1 R
heard HH ER1 D
hearing HH IY1 R IH0 NG
heart HH AA1 R T
hearth HH AA1 R TH
heat HH IY1 T
heater HH IY1 T ER0
heaters HH IY1 T ER0 Z
heath HH IY1 TH
heather HH EH1 DH ER0
heating HH IY1 T IH0 NG
heavy HH EH1 V IY0
hector HH EH1 K T ER0
hedge HH EH1 JH
hedgehog HH EH1 JH HH AA2 G
hedges HH EH1 JH IH0 Z
heidi HH AY1 D IY0
held HH EH1 L D
helen HH EH1 L AH0 N
hello HH AH0 L OW1
helmet HH EH1 L M AH0 T
help HH EH1 L P
helped HH EH1 L P T
helpful HH EH1 L P F AH0 L
helping HH EH1 L P IH0 NG
helps HH EH1 L P S
hen HH EH1 N
henry HH EH1 N R IY0
hens HH EH1 N Z
her HH ER1
herbert HH ER1 B ER0 T
here HH IY1 R
hero HH IH1 R OW0
heron HH EH1 R AH0 N
herself HH ER0 S EH1 L F
hey HH EY1
hi HH AY1
hidden HH IH1 D AH0 N
hide HH AY1 D
hideout HH AY1 D AW2 T
high HH AY1
higher HH AY1 ER0
highest HH AY1 AH0 S T
highlight HH AY1 L AY2 T
highlights HH AY1 L AY2 T S
highly HH AY1 L IY0
hilarious HH IH0 L EH1 R IY0 AH0 S
hill HH IH1 L
him HH IH1 M
himself HH IH0 M S EH1 L F
hire HH AY1 ER0
hired HH AY1 ER0 D
his HH IH1 Z
history HH IH1 S T ER0 IY0
hit HH IH1 T
hits HH IH1 T S
hitting HH IH1 T IH0 NG
hob HH AA1 B
hobbies HH AA1 B IY0 Z
hobby HH AA1 B IY0
hockey HH AA1 K IY0
hoist HH OY1 S T
hoists HH OY1 S T S
hold HH OW1 L D
holding HH OW1 L D IH0 NG
hole HH OW1 L
holiday HH AA1 L AH0 D EY2
holidays HH AA1 L AH0 D EY2 Z
hollow HH AA1 L OW0
holly HH AA1 L IY0
holy HH OW1 L IY0
home HH OW1 M
homes HH OW1 M Z
honest AA1 N AH0 S T
honestly AA1 N AH0 S T L IY0
honey HH AH1 N IY0
honeysuckle HH AH1 N IY0 S AH2 K AH0 L
honor AA1 N ER0
hood HH UH1 D
hook HH UH1 K
hooks HH UH1 K S
hope HH OW1 P
hopefully HH OW1 P F AH0 L IY0
hopes HH OW1 P S
hoping HH OW1 P IH0 NG
horizon HH ER0 AY1 Z AH0 N
horrible HH AO1 R AH0 B AH0 L
horse HH AO1 R S
hose HH OW1 Z
hospital HH AA1 S P IH2 T AH0 L
host HH OW1 S T
hot HH AA1 T
hotel HH OW0 T EH1 L
hour AW1 ER0
hours AW1 ER0 Z
house HH AW1 S
houses HH AW1 S AH0 Z
housing HH AW1 Z IH0 NG
how HH AW1
however HH AW2 EH1 V ER0
huge HH Y UW1 JH
hugh HH Y UW1
hugo HH Y UW1 G OW0
hull HH AH1 L
human HH Y UW1 M AH0 N
humans HH Y UW1 M AH0 N Z
humidifier HH Y UW0 M IH1 D AH0 F AY2 ER0
humor HH Y UW1 M ER0
hundred HH AH1 N D R AH0 D
hundreds HH AH1 N D R AH0 D Z
hundredth HH AH1 N D R AH0 D TH
hungry HH AH1 NG G R IY0
hunter HH AH1 N T ER0
hurricane HH ER1 AH0 K EY2 N
hurt HH ER1 T
husband HH AH1 Z B AH0 N D
hut HH AH1 T
hutch HH AH1 CH
hyacinth HH AY1 AH0 S IH2 N TH
i AY1
ian IY1 AH0 N
ice AY1 S
id IH1 D
ida AY1 D AH0
idea AY0 D IY1 AH0
ideal AY0 D IY1 L
ideas AY0 D IY1 AH0 Z
identify AY0 D EH1 N T AH0 F AY2
identity AY0 D EH1 N T IH0 T IY2
if IH1 F
ignore IH2 G N AO1 R
ill IH1 L
illegal IH2 L IY1 G AH0 L
image IH1 M AH0 JH
images IH1 M AH0 JH AH0 Z
imagine IH2 M AE1 JH AH0 N
immediate IH2 M IY1 D IY2 AH0 T
immediately IH2 M IY1 D IY2 AH0 T L IY0
immersion IH2 M ER1 ZH AH0 N
imogen IH1 M AH0 G AH0 N
impact IH2 M P AE1 K T
importance IH2 M P AO1 R T AH0 N S
important IH2 M P AO1 R T AH0 N T
impossible IH2 M P AA1 S AH0 B AH0 L
impression IH2 M P R EH1 SH AH0 N
impressive IH2 M P R EH1 S IH0 V
improve IH2 M P R UW1 V
improved IH2 M P R UW1 V D
in IH0 N
incident IH1 N S AH0 D AH0 N T
include IH2 N K L UW1 D
included IH2 N K L UW1 D AH0 D
includes IH2 N K L UW1 D Z
including IH2 N K L UW1 D IH0 NG
income IH1 N K AH2 M
increase IH2 N K R IY1 S
increased IH2 N K R IY1 S T
increasing IH2 N K R IY1 S IH0 NG
increasingly IH0 N K R IY1 S IH0 NG L IY0
incredible IH2 N K R EH1 D AH0 B AH0 L
incredibly IH2 N K R EH1 D AH0 B L IY0
indeed IH2 N D IY1 D
independent IH2 N D IH0 P EH1 N D AH0 N T
india IH1 N D IY0 AH0
indian IH1 N D IY0 AH0 N
indigo IH1 N D AH0 G OW2
individual IH2 N D AH0 V IH1 JH AH0 W AH0 L
individuals IH2 N D AH0 V IH1 JH AH0 W AH0 L Z
indoor IH1 N D AO2 R
industry IH1 N D AH0 S T R IY0
influence IH1 N F L UW0 AH0 N S
info IH1 N F OW0
information IH2 N F ER0 M EY1 SH AH0 N
ingrid IH1 NG G R IH0 D
initial IH2 N IH1 SH AH0 L
injured IH1 N JH ER0 D
injuries IH1 N JH ER0 IY0 Z
injury IH1 N JH ER0 IY0
inner IH1 N ER0
innocent IH1 N AH0 S AH0 N T
inside IH2 N S AY1 D
instance IH1 N S T AH0 N S
instead IH2 N S T EH1 D
institutions IH2 N S T IH0 T UW1 SH AH0 N Z
insurance IH2 N SH UH1 R AH0 N S
intelligence IH2 N T EH1 L AH0 JH AH0 N S
intended IH2 N T EH1 N D IH0 D
intercom IH1 N T ER0 K AA2 M
interest IH1 N T R AH0 S T
interested IH1 N T R AH0 S T IH0 D
interesting IH1 N T R AH0 S T IH0 NG
interests IH1 N T R AH0 S T S
interior IH2 N T IH1 R IY0 ER0
internal IH2 N T ER1 N AH0 L
international IH2 N T ER0 N AE1 SH AH0 N AH0 L
internet IH1 N T ER0 N EH2 T
interview IH1 N T ER0 V Y UW2
into IH1 N T UW0
introduced IH2 N T R AH0 D UW1 S T
invest IH2 N V EH1 S T
investigation IH2 N V EH2 S T AH0 G EY1 SH AH0 N
investment IH2 N V EH1 S T M AH0 N T
investors IH2 N V EH1 S T ER0 Z
invited IH2 N V AY1 T AH0 D
involved IH2 N V AA1 L V D
ionizer AY1 AH0 N AY2 Z ER0
ireland AY1 ER0 L AH0 N D
irene AY0 R IY1 N
iris AY1 R AH0 S
iron AY1 ER0 N
ironing AY1 ER0 N IH0 NG
irrigation IH2 R AH0 G EY1 SH AH0 N
is IH1 Z
isaac AY1 Z AH0 K
isabel IH1 Z AH0 B EH2 L
isabella IH2 Z AH0 B EH1 L AH0
island AY1 L AH0 N D
issue IH1 SH UW0
issues IH1 SH UW0 Z
it IH1 T
italian IH2 T AE1 L Y AH0 N
italy IH1 T AH0 L IY0
item AY1 T AH0 M
items AY1 T AH0 M Z
its IH1 T S
itself IH2 T S EH1 L F
ivan AY1 V AH0 N
ivory AY1 V ER0 IY0
ivy AY1 V IY0
j JH EY1
jack JH AE1 K
jackie JH AE1 K IY0
jacob JH EY1 K AH0 B
jacuzzi JH AH0 K UW1 Z IY0
jail JH EY1 L
jake JH EY1 K
james JH EY1 M Z
jamie JH EY1 M IY0
jane JH EY1 N
janet JH AE1 N AH0 T
january JH AE1 N Y UW0 EH2 R IY0
japan JH AH0 P AE1 N
japanese JH AE2 P AH0 N IY1 Z
jasmine JH AE1 Z M AH0 N
jason JH EY1 S AH0 N
jean JH IY1 N
jeff JH EH1 F
jeffrey JH EH1 F R IY0
jennifer JH EH1 N AH0 F ER0
jenny JH EH1 N IY0
jeremy JH EH1 R AH0 M IY2
jerry JH EH1 R IY0
jersey JH ER1 Z IY0
jessica JH EH1 S IH0 K AH0
jetty JH EH1 T IY0
jigsaw JH IH1 G S AO2
jill JH IH1 L
jim JH IH1 M
joan JH OW1 N
joanna JH OW0 AE1 N AH0
job JH AA1 B
jobs JH AA1 B Z
joe JH OW1
joel JH OW1 AH0 L
john JH AA1 N
join JH OY1 N
joined JH OY1 N D
joist JH OY1 S T
joke JH OW1 K
jokes JH OW1 K S
jonathan JH AA1 N AH0 TH AH0 N
jones JH OW1 N Z
jordan JH AO1 R D AH0 N
joseph JH OW1 S AH0 F
josephine JH OW1 S AH0 F IY2 N
joshua JH AA1 SH UW2 AH0
journal JH ER1 N AH0 L
journey JH ER1 N IY0
joyce JH OY1 S
judge JH AH1 JH
judith JH UW1 D AH0 TH
judy JH UW1 D IY0
julia JH UW1 L Y AH0
julian JH UW1 L IY0 AH0 N
julie JH UW1 L IY0
juliet JH UW1 L IY0 EH2 T
july JH UW2 L AY1
jump JH AH1 M P
junction JH AH1 NG K SH AH0 N
june JH UW1 N
jungle JH AH1 NG G AH0 L
junior JH UW1 N Y ER0
juniper JH UW1 N AH0 P ER0
just JH AH1 S T
justice JH AH1 S T AH0 S
k K EY1
karen K EH1 R AH0 N
karl K AA1 R L
kate K EY1 T
katherine K AE1 TH ER0 IH0 N
kathleen K AE0 TH L IY1 N
katie K EY1 T IY0
kayak K AY1 AE0 K
keep K IY1 P
keeping K IY1 P IH0 NG
keeps K IY1 P S
keith K IY1 TH
kelly K EH1 L IY0
kennel K EH1 N AH0 L
kenneth K EH1 N IH0 TH
kept K EH1 P T
kerb K ER1 B
kettle K EH1 T AH0 L
kevin K EH1 V IH0 N
key K IY1
keypad K IY1 P AE2 D
keys K IY1 Z
kick K IH1 K
kicked K IH1 K T
kid K IH1 D
kidding K IH1 D IH0 NG
kids K IH1 D Z
kiln K IH1 L N
kilo K IH1 L OW2
kim K IH1 M
kind K AY1 N D
kinds K AY1 N D Z
king K IH1 NG
kitchen K IH1 CH AH0 N
kitchenette K IH2 CH AH0 N EH1 T
kitchens K IH1 CH AH0 N Z
knew N UW1
knife N AY1 F
knitting N IH1 T IH0 NG
knock N AA1 K
know N OW1
knowing N OW1 IH0 NG
knowledge N AA1 L AH0 JH
known N OW1 N
knows N OW1 Z
korea K AO2 R IY1 AH0
kyle K AY1 L
l EH1 L
la L AA1
lab L AE1 B
labor L EY1 B ER0
labour L EY1 B ER0
lack L AE1 K
lacquer L AE1 K ER0
ladder L AE1 D ER0
ladies L EY1 D IY0 Z
lady L EY1 D IY0
laid L EY1 D
lair L EH1 R
lake L EY1 K
laminate L AE1 M AH0 N AH0 T
lamp L AE1 M P
lamps L AE1 M P S
land L AE1 N D
landing L AE1 N D IH0 NG
landings L AE1 N D IH0 NG Z
lane L EY1 N
language L AE1 NG G W AH0 JH
lantern L AE1 N T ER0 N
lanterns L AE1 N T ER0 N Z
laptop L AE1 P T AA2 P
larder L AA1 R D ER0
large L AA1 R JH
largely L AA1 R JH L IY0
larger L AA1 R JH ER0
largest L AA1 R JH AH0 S T
laser L EY1 Z ER0
last L AE1 S T
late L EY1 T
lately L EY1 T L IY0
later L EY1 T ER0
latest L EY1 T AH0 S T
lathe L EY1 DH
laugh L AE1 F
laughing L AE1 F IH0 NG
launch L AO1 N CH
launched L AO1 N CH T
laundry L AO1 N D R IY0
laura L AO1 R AH0
laurel L AO1 R AH0 L
lauren L AO1 R AH0 N
lava L AA1 V AH0
lavatory L AE1 V AH0 T AO2 R IY0
lavender L AE1 V AH0 N D ER0
law L AO1
lawn L AO1 N
lawns L AO1 N Z
lawrence L AO1 R AH0 N S
laws L AO1 Z
lawyer L AO1 Y ER0
lawyers L AO1 Y ER0 Z
lay L EY1
lazy L EY1 Z IY0
le L AH0
lead L EH1 D
leader L IY1 D ER0
leaders L IY1 D ER0 Z
leadership L IY1 D ER0 SH IH2 P
leading L IY1 D IH0 NG
leads L IY1 D Z
league L IY1 G
leah L IY1 AH0
lean L IY1 N
learn L ER1 N
learned L ER1 N D
learning L ER1 N IH0 NG
least L IY1 S T
leave L IY1 V
leaves L IY1 V Z
leaving L IY1 V IH0 NG
led L EH1 D
ledge L EH1 JH
ledges L EH1 JH IH0 Z
left L EH1 F T
leg L EH1 G
legal L IY1 G AH0 L
legislation L EH2 JH AH0 S L EY1 SH AH0 N
legs L EH1 G Z
lemon L EH1 M AH0 N
lending L EH1 N D IH0 NG
length L EH1 NG K TH
leo L IY1 OW0
leon L IY1 AA0 N
leonard L EH1 N ER0 D
leopard L EH1 P ER0 D
less L EH1 S
lesson L EH1 S AH0 N
let L EH1 T
letter L EH1 T ER0
letters L EH1 T ER0 Z
letting L EH1 T IH0 NG
level L EH1 V AH0 L
levels L EH1 V AH0 L Z
lewis L UW1 IH0 S
liam L IY1 AH0 M
liberal L IH1 B ER2 AH0 L
libraries L AY1 B R EH0 R IY2 Z
library L AY1 B R EH0 R IY2
license L AY1 S AH0 N S
lie L AY1
lies L AY1 Z
life L AY1 F
lifestyle L AY1 F S T AY2 L
lifetime L AY1 F T AY2 M
lift L IH1 F T
light L AY1 T
lighthouse L AY1 T HH AW2 S
lighting L AY1 T IH0 NG
lightning L AY1 T N IH0 NG
lights L AY1 T S
like L AY1 K
liked L AY1 K T
likely L AY1 K L IY0
likes L AY1 K S
lilac L AY1 L AE2 K
lilacs L AY1 L AE2 K S
lilies L IH1 L IY0 Z
lily L IH1 L IY0
lima L AY1 M AH0
lime L AY1 M
limit L IH1 M AH0 T
limited L IH1 M AH0 T AH0 D
limits L IH1 M AH0 T S
linda L IH1 N D AH0
line L AY1 N
linen L IH1 N AH0 N
lines L AY1 N Z
link L IH1 NG K
linked L IH1 NG K T
links L IH1 NG K S
lino L IY1 N OW0
lintel L IH1 N T AH0 L
lion L AY1 AH0 N
lisa L IY1 S AH0
list L IH1 S T
listed L IH1 S T AH0 D
listen L IH1 S AH0 N
listening L IH1 S AH0 N IH0 NG
literally L IH1 T ER0 AH0 L IY0
little L IH1 T AH0 L
live L AY1 V
lived L IH1 V D
lives L IH1 V Z
living L IH1 V IH0 NG
lizard L IH1 Z ER0 D
load L OW1 D
loan L OW1 N
loans L OW1 N Z
lobby L AA1 B IY0
local L OW1 K AH0 L
location L OW0 K EY1 SH AH0 N
lock L AA1 K
locked L AA1 K T
locker L AA1 K ER0
lockers L AA1 K ER0 Z
locks L AA1 K S
lodge L AA1 JH
loft L AO1 F T
log L AO1 G
loggia L AA1 G IY0 AH0
logic L AA1 JH IH0 K
logs L AO1 G Z
lois L OW1 AH0 S
lola L OW1 L AH0
london L AH1 N D AH0 N
long L AO1 NG
longer L AO1 NG G ER0
loo L UW1
look L UH1 K
looked L UH1 K T
looking L UH1 K IH0 NG
looks L UH1 K S
loom L UW1 M
loop L UW1 P
lord L AO1 R D
los L OW1 S
lose L UW1 Z
losing L UW1 Z IH0 NG
loss L AO1 S
lost L AO1 S T
lot L AA1 T
lots L AA1 T S
loud L AW1 D
louis L UW1 IH0 S
louise L UW0 IY1 Z
lounge L AW1 N JH
lounges L AW1 N JH IH0 Z
love L AH1 V
loved L AH1 V D
lovely L AH1 V L IY0
loves L AH1 V Z
low L OW1
lower L OW1 ER0
lucas L UW1 K AH0 S
luck L AH1 K
lucky L AH1 K IY0
lucy L UW1 S IY0
luke L UW1 K
lunch L AH1 N CH
lupin L UW1 P AH0 N
lydia L IH1 D IY0 AH0
lying L AY1 IH0 NG
m EH1 M
machine M AH0 SH IY1 N
machines M AH0 SH IY1 N Z
mad M AE1 D
made M EY1 D
magazine M AE1 G AH0 Z IY2 N
magenta M AH0 JH EH1 N T AH0
magic M AE1 JH IH0 K
magnolia M AE0 G N OW1 L Y AH0
magpie M AE1 G P AY2
mail M EY1 L
mailbox M EY1 L B AA2 K S
main M EY1 N
mainly M EY1 N L IY0
mains M EY1 N Z
maintain M EY0 N T EY1 N
maintenance M EY1 N T AH0 N AH0 N S
major M EY1 JH ER0
majority M AH0 JH AO1 R AH0 T IY0
make M EY1 K
maker M EY1 K ER0
makes M EY1 K S
making M EY1 K IH0 NG
malcolm M AE1 L K AH0 M
male M EY1 L
man M AE1 N
manage M AE1 N AH0 JH
managed M AE1 N AH0 JH D
management M AE1 N AH0 JH M AH0 N T
manager M AE1 N AH0 JH ER0
manhattan M AE0 N HH AE1 T AH0 N
manifold M AE1 N AH0 F OW2 L D
mantel M AE1 N T AH0 L
many M EH1 N IY0
map M AE1 P
maple M EY1 P AH0 L
marble M AA1 R B AH0 L
march M AA1 R CH
marcus M AA1 R K AH0 S
margaret M AA1 R G ER0 IH0 T
maria M ER0 IY1 AH0
marie M ER0 IY1
marigold M EH1 R AH0 G OW2 L D
marion M EH1 R IY0 AH0 N
mark M AA1 R K
market M AA1 R K AH0 T
marketing M AA1 R K AH0 T IH0 NG
markets M AA1 R K AH0 T S
maroon M ER0 UW1 N
marriage M EH1 R IH0 JH
married M EH1 R IY0 D
marry M EH1 R IY0
marsh M AA1 R SH
martha M AA1 R TH AH0
martin M AA1 R T AH0 N
mary M EH1 R IY0
mass M AE1 S
massive M AE1 S IH0 V
mast M AE1 S T
master M AE1 S T ER0
match M AE1 CH
matches M AE1 CH AH0 Z
mate M EY1 T
material M AH0 T IH1 R IY0 AH0 L
math M AE1 TH
matilda M AH0 T IH1 L D AH0
matter M AE1 T ER0
matters M AE1 T ER0 Z
matthew M AE1 TH Y UW0
mattress M AE1 T R AH0 S
maurice M AO0 R IY1 S
max M AE1 K S
may M EY1
maya M AY1 AH0
maybe M EY1 B IY0
mayor M EY1 ER0
me M IY1
meadow M EH1 D OW2
meal M IY1 L
mean M IY1 N
meaning M IY1 N IH0 NG
means M IY1 N Z
meant M EH1 N T
meanwhile M IY1 N W AY2 L
measure M EH1 ZH ER0
measures M EH1 ZH ER0 Z
meat M IY1 T
medal M EH1 D AH0 L
media M IY1 D IY0 AH0
medical M EH1 D AH0 K AH0 L
medicine M EH1 D AH0 S AH0 N
meet M IY1 T
meeting M IY1 T IH0 NG
megan M EY1 G AH0 N
melissa M AH0 L IH1 S AH0
member M EH1 M B ER0
members M EH1 M B ER0 Z
memories M EH1 M ER0 IY0 Z
memory M EH1 M ER0 IY0
men M EH1 N
mental M EH1 N T AH0 L
mention M EH1 N SH AH0 N
mentioned M EH1 N SH AH0 N D
mess M EH1 S
message M EH1 S AH0 JH
messages M EH1 S AH0 JH AH0 Z
met M EH1 T
metal M EH1 T AH0 L
meter M IY1 T ER0
meters M IY1 T ER0 Z
method M EH1 TH AH0 D
mexico M EH1 K S AH0 K OW2
mezzanine M EH1 Z AH0 N IY2 N
michael M AY1 K AH0 L
michigan M IH1 SH IH0 G AH0 N
microwave M AY1 K R AH0 W EY2 V
mid M IH1 D
middle M IH1 D AH0 L
midnight M IH1 D N AY2 T
might M AY1 T
mike M AY1 K
mile M AY1 L
miles M AY1 L Z
military M IH1 L AH0 T EH2 R IY0
milk M IH1 L K
mill M IH1 L
millie M IH1 L IY0
million M IH1 L Y AH0 N
millions M IH1 L Y AH0 N Z
mind M AY1 N D
minds M AY1 N D Z
mine M AY1 N
minimum M IH1 N AH0 M AH0 M
minister M IH1 N AH0 S T ER0
minor M AY1 N ER0
minority M AY0 N AO1 R AH0 T IY0
mint M IH1 N T
minute M IH1 N AH0 T
minutes M IH1 N AH0 T S
miriam M IH1 R IY0 AH0 M
mirror M IH1 R ER0
mirrors M IH1 R ER0 Z
miss M IH1 S
missed M IH1 S T
missing M IH1 S IH0 NG
mission M IH1 SH AH0 N
mist M IH1 S T
mistake M IH0 S T EY1 K
mistakes M IH0 S T EY1 K S
mister M IH1 S T ER0
mistress M IH1 S T R AH0 S
mix M IH1 K S
mixed M IH1 K S T
mixer M IH1 K S ER0
mobile M OW1 B AH0 L
mode M OW1 D
model M AA1 D AH0 L
models M AA1 D AH0 L Z
modem M OW1 D AH0 M
modern M AA1 D ER0 N
module M AA1 JH UW0 L
molly M AA1 L IY0
mom M AA1 M
moment M OW1 M AH0 N T
moments M OW1 M AH0 N T S
monday M AH1 N D IY0
money M AH1 N IY0
monica M AA1 N IH0 K AH0
monitor M AA1 N AH0 T ER0
monkey M AH1 NG K IY0
monster M AA1 N S T ER0
month M AH1 N TH
months M AH1 N TH S
mood M UW1 D
moon M UW1 N
moonlight M UW1 N L AY2 T
moor M UH1 R
mooring M UH1 R IH0 NG
moose M UW1 S
mop M AA1 P
moral M AO1 R AH0 L
more M AO1 R
morning M AO1 R N IH0 NG
mortgage M AO1 R G AH0 JH
mosaic M OW0 Z EY1 IH0 K
moss M AO1 S
most M OW1 S T
mostly M OW1 S T L IY0
moth M AO1 TH
mother M AH1 DH ER0
motion M OW1 SH AH0 N
motor M OW1 T ER0
motorbike M OW1 T ER0 B AY2 K
mountain M AW1 N T AH0 N
mountains M AW1 N T AH0 N Z
mouth M AW1 TH
move M UW1 V
moved M UW1 V D
movement M UW1 V M AH0 N T
moves M UW1 V Z
movie M UW1 V IY0
movies M UW1 V IY0 Z
moving M UW1 V IH0 NG
mower M OW1 ER0
mr M IH1 S T ER0
mrs M IH1 S IH0 Z
ms M IH1 Z
much M AH1 CH
mud M AH1 D
multiple M AH1 L T AH0 P AH0 L
mum M AH1 M
mummy M AH1 M IY0
museum M Y UW0 Z IY1 AH0 M
music M Y UW1 Z IH0 K
must M AH1 S T
my M AY1
myself M AY2 S EH1 L F
mystery M IH1 S T ER0 IY0
n EH1 N
name N EY1 M
named N EY1 M D
names N EY1 M Z
nancy N AE1 N S IY0
nanny N AE1 N IY0
naomi N EY0 OW1 M IY0
narrow N EH1 R OW0
natalie N AE1 T AH0 L IY0
natasha N AH0 T AA1 SH AH0
nathan N EY1 TH AH0 N
nation N EY1 SH AH0 N
national N AE1 SH AH0 N AH0 L
nations N EY1 SH AH0 N Z
native N EY1 T IH0 V
natural N AE1 CH ER0 AH0 L
nature N EY1 CH ER0
navy N EY1 V IY0
near N IH1 R
nearby N IH1 R B AY1
nearly N IH1 R L IY0
neat N IY1 T
necessarily N EH2 S AH0 S EH1 R AH0 L IY0
necessary N EH1 S AH0 S EH2 R IY0
neck N EH1 K
need N IY1 D
needed N IY1 D AH0 D
needs N IY1 D Z
negative N EH1 G AH0 T IH0 V
neighborhood N EY1 B ER0 HH UH2 D
neighbors N EY1 B ER0 Z
neil N IY1 L
neither N IY1 DH ER0
neon N IY1 AA0 N
nephew N EH1 F Y UW0
nervous N ER1 V AH0 S
nest N EH1 S T
net N EH1 T
network N EH1 T W ER2 K
never N EH1 V ER0
new N UW1
news N UW1 Z
newspaper N UW1 Z P EY2 P ER0
newt N UW1 T
next N EH1 K S T
nice N AY1 S
niche N IH1 CH
niches N IH1 CH IH0 Z
nicholas N IH1 K AH0 L AH0 S
nicole N IH0 K OW1 L
niece N IY1 S
nigel N AY1 JH AH0 L
night N AY1 T
nights N AY1 T S
nightstand N AY1 T S T AE2 N D
nina N IY1 N AH0
nine N AY1 N
nineteen N AY1 N T IY1 N
nineteenth N AY1 N T IY1 N TH
ninetieth N AY1 N T IY0 IH0 TH
ninety N AY1 N T IY0
ninth N AY1 N TH
no N OW1
noah N OW1 AH0
nobody N OW1 B AA2 D IY2
noise N OY1 Z
non N AA1 N
none N AH1 N
nook N UH1 K
nooks N UH1 K S
noon N UW1 N
nor N AO1 R
nora N AO1 R AH0
norma N AO1 R M AH0
normal N AO1 R M AH0 L
normally N AO1 R M AH0 L IY0
norman N AO1 R M AH0 N
north N AO1 R TH
northeast N AO2 R TH IY1 S T
northern N AO1 R DH ER0 N
northwest N AO2 R TH W EH1 S T
nose N OW1 Z
not N AA1 T
note N OW1 T
notes N OW1 T S
nothing N AH1 TH IH0 NG
notice N OW1 T AH0 S
noticed N OW1 T AH0 S T
november N OW0 V EH1 M B ER0
now N AW1
nowadays N AW1 AH0 D EY2 Z
nowhere N OW1 W EH2 R
nozzle N AA1 Z AH0 L
nuclear N UW1 K L IY0 ER0
number N AH1 M B ER0
numbers N AH1 M B ER0 Z
nurseries N ER1 S ER0 IY0 Z
nursery N ER1 S ER0 IY0
nuts N AH1 T S
o OW1
oak OW1 K
object AA1 B JH EH0 K T
obvious AA1 B V IY0 AH0 S
obviously AA1 B V IY0 AH0 S L IY0
occasionally AH0 K EY1 ZH AH0 N AH0 L IY0
occurred AH0 K ER1 D
ocean OW1 SH AH0 N
octagon AA1 K T AH0 G AA2 N
october AA0 K T OW1 B ER0
odd AA1 D
odds AA1 D Z
of AH1 V
off AO1 F
offense AH0 F EH1 N S
offensive AH0 F EH1 N S IH0 V
offer AO1 F ER0
offered AO1 F ER0 D
offering AO1 F ER0 IH0 NG
offers AO1 F ER0 Z
office AO1 F IH0 S
officer AO1 F AH0 S ER0
officers AO1 F AH0 S ER0 Z
offices AO1 F AH0 S AH0 Z
official AH0 F IH1 SH AH0 L
officials AH0 F IH1 SH AH0 L Z
often AO1 F AH0 N
oh OW1
ohio OW0 HH AY1 OW0
oil OY1 L
ok OW1 K EY1
okay OW2 K EY1
old OW1 L D
older OW1 L D ER0
oldest OW1 L D AH0 S T
olive AA1 L AH0 V
oliver AA1 L AH0 V ER0
olivia OW0 L IH1 V IY0 AH0
olympics OW0 L IH1 M P IH0 K S
omega OW0 M EH1 G AH0
on AA1 N
once W AH1 N S
one W AH1 N
ones W AH1 N Z
online AO1 N L AY2 N
only OW1 N L IY0
onto AA1 N T UW0
op AA1 P
opal OW1 P AH0 L
open OW1 P AH0 N
opened OW1 P AH0 N D
opening OW1 P AH0 N IH0 NG
operating AA1 P ER0 EY2 T IH0 NG
operation AA2 P ER0 EY1 SH AH0 N
operations AA2 P ER0 EY1 SH AH0 N Z
opinion AH0 P IH1 N Y AH0 N
opinions AH0 P IH1 N Y AH0 N Z
opportunities AA2 P ER0 T UW1 N AH0 T IY0 Z
opportunity AA2 P ER0 T UW1 N AH0 T IY0
opposed AH0 P OW1 Z D
opposite AA1 P AH0 Z AH0 T
opposition AA2 P AH0 Z IH1 SH AH0 N
option AA1 P SH AH0 N
options AA1 P SH AH0 N Z
or AO1 R
orange AO1 R AH0 N JH
orchard AO1 R CH ER0 D
orchid AO1 R K AH0 D
orchids AO1 R K AH0 D Z
order AO1 R D ER0
ordered AO1 R D ER0 D
orders AO1 R D ER0 Z
organ AO1 R G AH0 N
organization AO2 R G AH0 N AH0 Z EY1 SH AH0 N
original ER0 IH1 JH AH0 N AH0 L
originally ER0 IH1 JH AH0 N AH0 L IY0
oscar AO1 S K ER0
other AH1 DH ER0
others AH1 DH ER0 Z
otherwise AH1 DH ER0 W AY2 Z
otter AA1 T ER0
ottoman AA1 T AH0 M AH0 N
ought AO1 T
our AW1 ER0
ours AW1 ER0 Z
ourselves AW0 ER0 S EH1 L V Z
out AW1 T
outcome AW1 T K AH2 M
outdoor AW1 T D AO2 R
outdoors AW1 T D AO1 R Z
outer AW1 T ER0
outlet AW1 T L EH2 T
outlets AW1 T L EH2 T S
outside AW1 T S AY1 D
oval OW1 V AH0 L
oven AH1 V AH0 N
over OW1 V ER0
overall OW1 V ER0 AO2 L
overnight OW1 V ER0 N AY1 T
owen OW1 AH0 N
owl AW1 L
own OW1 N
owned OW1 N D
owner OW1 N ER0
owners OW1 N ER0 Z
p P IY1
pace P EY1 S
pack P AE1 K
package P AE1 K AH0 JH
paddock P AE1 D AH0 K
page P EY1 JH
pages P EY1 JH AH0 Z
paid P EY1 D
pain P EY1 N
paint P EY1 N T
painting P EY1 N T IH0 NG
pair P EH1 R
pakistan P AE1 K IH0 S T AE2 N
palm P AA1 M
palms P AA1 M Z
pamela P AE1 M AH0 L AH0
pan P AE1 N
pane P EY1 N
panel P AE1 N AH0 L
paneling P AE1 N AH0 L IH0 NG
panels P AE1 N AH0 L Z
panes P EY1 N Z
panic P AE1 N IH0 K
pansy P AE1 N Z IY0
panther P AE1 N TH ER0
pantry P AE1 N T R IY0
pants P AE1 N T S
papa P AA1 P AH2
paper P EY1 P ER0
papers P EY1 P ER0 Z
parade P ER0 EY1 D
parapet P EH1 R AH0 P EH2 T
parcel P AA1 R S AH0 L
parcels P AA1 R S AH0 L Z
parent P EH1 R AH0 N T
parents P EH1 R AH0 N T S
paris P EH1 R IH0 S
park P AA1 R K
parking P AA1 R K IH0 NG
parliament P AA1 R L AH0 M AH0 N T
parlor P AA1 R L ER0
parlour P AA1 R L ER0
parquet P AA0 R K EY1
part P AA1 R T
participate P AA0 R T IH1 S AH0 P EY2 T
particular P ER0 T IH1 K Y AH0 L ER0
particularly P AA2 R T IH1 K Y AH0 L ER0 L IY0
parties P AA1 R T IY0 Z
partner P AA1 R T N ER0
partners P AA1 R T N ER0 Z
partridge P AA1 R T R AH0 JH
parts P AA1 R T S
party P AA1 R T IY0
pass P AE1 S
passage P AE1 S AH0 JH
passageway P AE1 S AH0 JH W EY2
passed P AE1 S T
passing P AE1 S IH0 NG
past P AE1 S T
pasture P AE1 S CH ER0
path P AE1 TH
pathway P AE1 TH W EY2
patient P EY1 SH AH0 N T
patients P EY1 SH AH0 N T S
patio P AE1 T IY0 OW2
patios P AE1 T IY0 OW2 Z
patricia P AH0 T R IH1 SH AH0
patrick P AE1 T R IH0 K
pattern P AE1 T ER0 N
paul P AO1 L
paula P AO1 L AH0
pauline P AO0 L IY1 N
pavement P EY1 V M AH0 N T
pavilion P AH0 V IH1 L Y AH0 N
pavilions P AH0 V IH1 L Y AH0 N Z
pay P EY1
paying P EY1 IH0 NG
payment P EY1 M AH0 N T
pc P IY1 S IY1
peace P IY1 S
peacock P IY1 K AA2 K
pear P EH1 R
pearl P ER1 L
pebble P EH1 B AH0 L
pebbles P EH1 B AH0 L Z
pedestal P EH1 D AH0 S T AH0 L
peg P EH1 G
pegs P EH1 G Z
pen P EH1 N
pendant P EH1 N D AH0 N T
penelope P AH0 N EH1 L AH0 P IY0
pennsylvania P EH2 N S AH0 L V EY1 N Y AH0
penthouse P EH1 N T HH AW2 S
peony P IY1 AH0 N IY0
people P IY1 P AH0 L
per P ER1
percent P ER0 S EH1 N T
percentage P ER0 S EH1 N T AH0 JH
perch P ER1 CH
perfect P ER0 F EH1 K T
perfectly P ER1 F AH0 K T L IY0
perform P ER0 F AO1 R M
performance P ER0 F AO1 R M AH0 N S
pergola P ER1 G AH0 L AH0
perhaps P ER0 HH AE1 P S
period P IH1 R IY0 AH0 D
permanent P ER1 M AH0 N AH0 N T
person P ER1 S AH0 N
personal P ER1 S IH0 N AH0 L
personality P ER2 S AH0 N AE1 L IH0 T IY0
personally P ER1 S AH0 N AH0 L IY0
perspective P ER0 S P EH1 K T IH0 V
pet P EH1 T
peter P IY1 T ER0
pets P EH1 T S
petunia P AH0 T UW1 N IY0 AH0
phase F EY1 Z
pheasant F EH1 Z AH0 N T
philadelphia F IH2 L AH0 D EH1 L F IY0 AH0
philip F IH1 L AH0 P
phoebe F IY1 B IY0
phone F OW1 N
phones F OW1 N Z
photo F OW1 T OW2
photos F OW1 T OW2 Z
phyllis F IH1 L IH0 S
physical F IH1 Z IH0 K AH0 L
physically F IH1 Z IH0 K AH0 L IY0
piano P IY0 AE1 N OW0
pick P IH1 K
picked P IH1 K T
picking P IH1 K IH0 NG
picture P IH1 K CH ER0
pictures P IH1 K CH ER0 Z
piece P IY1 S
pieces P IY1 S AH0 Z
pier P IH1 R
piers P IH1 R Z
pigeon P IH1 JH AH0 N
pillar P IH1 L ER0
pillars P IH1 L ER0 Z
pillow P IH1 L OW0
pilot P AY1 L AH0 T
pine P AY1 N
pink P IH1 NG K
pipe P AY1 P
pipes P AY1 P S
pirate P AY1 R AH0 T
pit P IH1 T
pitch P IH1 CH
pizza P IY1 T S AH0
place P L EY1 S
placed P L EY1 S T
places P L EY1 S AH0 Z
plan P L AE1 N
plane P L EY1 N
planes P L EY1 N Z
planet P L AE1 N AH0 T
plank P L AE1 NG K
planks P L AE1 NG K S
planned P L AE1 N D
planning P L AE1 N IH0 NG
plans P L AE1 N Z
plant P L AE1 N T
planter P L AE1 N T ER0
planters P L AE1 N T ER0 Z
plants P L AE1 N T S
plastic P L AE1 S T IH0 K
platform P L AE1 T F AO2 R M
play P L EY1
played P L EY1 D
player P L EY1 ER0
players P L EY1 ER0 Z
playground P L EY1 G R AW2 N D
playing P L EY1 IH0 NG
playroom P L EY1 R UW2 M
plays P L EY1 Z
please P L IY1 Z
pleasure P L EH1 ZH ER0
plenty P L EH1 N T IY0
plight P L AY1 T
plinth P L IH1 N TH
plot P L AA1 T
plug P L AH1 G
plugs P L AH1 G Z
plum P L AH1 M
plus P L AH1 S
pm P IY1 EH1 M
pocket P AA1 K AH0 T
podium P OW1 D IY0 AH0 M
point P OY1 N T
pointed P OY1 N T IH0 D
points P OY1 N T S
police P AH0 L IY1 S
policies P AA1 L AH0 S IY0 Z
policy P AA1 L AH0 S IY0
political P AH0 L IH1 T AH0 K AH0 L
politics P AA1 L AH0 T IH2 K S
polly P AA1 L IY0
pond P AA1 N D
pool P UW1 L
poor P UW1 R
pop P AA1 P
poppy P AA1 P IY0
popular P AA1 P Y AH0 L ER0
population P AA2 P Y AH0 L EY1 SH AH0 N
porch P AO1 R CH
porches P AO1 R CH AH0 Z
port P AO1 R T
portico P AO1 R T AH0 K OW2
portrait P AO1 R T R AH0 T
position P AH0 Z IH1 SH AH0 N
positions P AH0 Z IH1 SH AH0 N Z
positive P AA1 Z AH0 T IH0 V
possibility P AA2 S AH0 B IH1 L AH0 T IY2
possible P AA1 S AH0 B AH0 L
possibly P AA1 S AH0 B L IY0
post P OW1 S T
posted P OW1 S T IH0 D
poster P OW1 S T ER0
posting P OW1 S T IH0 NG
posts P OW1 S T S
pot P AA1 T
potential P AH0 T EH1 N SH AH0 L
potentially P AH0 T EH1 N SH AH0 L IY0
pots P AA1 T S
pottery P AA1 T ER0 IY0
pounds P AW1 N D Z
poverty P AA1 V ER0 T IY0
power P AW1 ER0
powerful P AW1 ER0 F AH0 L
powers P AW1 ER0 Z
practice P R AE1 K T AH0 S
pre P R IY1
prefer P R AH0 F ER1
prepare P R IY0 P EH1 R
prepared P R IY0 P EH1 R D
presence P R EH1 Z AH0 N S
present P R EH1 Z AH0 N T
president P R EH1 Z AH0 D EH2 N T
presidential P R EH2 Z AH0 D EH1 N SH AH0 L
press P R EH1 S
pressure P R EH1 SH ER0
pretend P R IY0 T EH1 N D
pretty P R IH1 T IY0
prevent P R IH0 V EH1 N T
previous P R IY1 V IY0 AH0 S
previously P R IY1 V IY0 AH0 S L IY0
price P R AY1 S
prices P R AY1 S AH0 Z
primary P R AY1 M EH2 R IY0
prime P R AY1 M
primrose P R IH1 M R OW2 Z
princess P R IH1 N S EH0 S
print P R IH1 N T
printer P R IH1 N T ER0
prior P R AY1 ER0
priority P R AY0 AO1 R AH0 T IY0
prison P R IH1 Z AH0 N
private P R AY1 V AH0 T
prize P R AY1 Z
pro P R OW1
probably P R AA1 B AH0 B L IY2
problem P R AA1 B L AH0 M
problems P R AA1 B L AH0 M Z
process P R AA1 S EH2 S
produce P R AH0 D UW1 S
produced P R AH0 D UW1 S T
product P R AA1 D AH0 K T
production P R AH0 D AH1 K SH AH0 N
products P R AA1 D AH0 K T S
professional P R AH0 F EH1 SH AH0 N AH0 L
professor P R AH0 F EH1 S ER0
profile P R OW1 F AY2 L
profit P R AA1 F AH0 T
program P R OW1 G R AE2 M
programs P R OW1 G R AE2 M Z
progress P R AA1 G R EH2 S
project P R AA1 JH EH0 K T
projector P R AH0 JH EH1 K T ER0
projects P R AA1 JH EH0 K T S
promise P R AA1 M AH0 S
promised P R AA1 M AH0 S T
proof P R UW1 F
proper P R AA1 P ER0
properly P R AA1 P ER0 L IY0
property P R AA1 P ER0 T IY0
protect P R AH0 T EH1 K T
protection P R AH0 T EH1 K SH AH0 N
proud P R AW1 D
prove P R UW1 V
provide P R AH0 V AY1 D
provided P R AH0 V AY1 D IH0 D
providing P R AH0 V AY1 D IH0 NG
public P AH1 B L IH0 K
published P AH1 B L IH0 SH T
pull P UH1 L
pulled P UH1 L D
pulling P UH1 L IH0 NG
pump P AH1 M P
pumps P AH1 M P S
puppy P AH1 P IY0
purchase P ER1 CH AH0 S
pure P Y UH1 R
purifier P Y UH1 R AH0 F AY2 ER0
purple P ER1 P AH0 L
purpose P ER1 P AH0 S
push P UH1 SH
pushed P UH1 SH T
pushing P UH1 SH IH0 NG
put P UH1 T
puts P UH1 T S
putting P AH1 T IH0 NG
puzzle P AH1 Z AH0 L
q K Y UW1
quality K W AA1 L AH0 T IY0
quarter K W AO1 R T ER0
quartz K W AO1 R T S
quay K IY1
que K Y UW1
quebec K W AH0 B EH1 K
queen K W IY1 N
question K W EH1 S CH AH0 N
questions K W EH1 S CH AH0 N Z
quick K W IH1 K
quickly K W IH1 K L IY0
quiet K W AY1 AH0 T
quit K W IH1 T
quite K W AY1 T
quote K W OW1 T
r AA1 R
rabbit R AE1 B AH0 T
race R EY1 S
rachel R EY1 CH AH0 L
rack R AE1 K
racks R AE1 K S
radiator R EY1 D IY0 EY2 T ER0
radiators R EY1 D IY0 EY2 T ER0 Z
radio R EY1 D IY0 OW2
rail R EY1 L
railing R EY1 L IH0 NG
railings R EY1 L IH0 NG Z
rails R EY1 L Z
rain R EY1 N
rainbow R EY1 N B OW2
raise R EY1 Z
raised R EY1 Z D
raising R EY1 Z IH0 NG
ralph R AE1 L F
ramp R AE1 M P
ramps R AE1 M P S
ran R AE1 N
random R AE1 N D AH0 M
range R EY1 N JH
rare R EH1 R
rarely R EH1 R L IY0
rate R EY1 T
rates R EY1 T S
rather R AE1 DH ER0
raven R EY1 V AH0 N
ravine R AH0 V IY1 N
raymond R EY1 M AH0 N D
reach R IY1 CH
reached R IY1 CH T
reaction R IY0 AE1 K SH AH0 N
read R EH1 D
reading R IY1 D IH0 NG
ready R EH1 D IY0
real R IY1 L
reality R IY2 AE1 L AH0 T IY2
realize R IY1 AH0 L AY2 Z
realized R IY1 AH0 L AY2 Z D
really R IH1 L IY0
rear R IH1 R
reason R IY1 Z AH0 N
reasonable R IY1 Z AH0 N AH0 B AH0 L
reasons R IY1 Z AH0 N Z
rebecca R AH0 B EH1 K AH0
recall R IY1 K AO2 L
receive R AH0 S IY1 V
received R AH0 S IY1 V D
recent R IY1 S AH0 N T
recently R IY1 S AH0 N T L IY0
recess R IH0 S EH1 S
recesses R IY1 S EH0 S AH0 Z
recession R IH0 S EH1 SH AH0 N
recliner R IH0 K L AY1 N ER0
recognize R EH1 K AH0 G N AY2 Z
recommend R EH2 K AH0 M EH1 N D
record R AH0 K AO1 R D
recorded R AH0 K AO1 R D IH0 D
recording R AH0 K AO1 R D IH0 NG
records R AH0 K AO1 R D Z
recovery R IH0 K AH1 V R IY0
rectangle R EH1 K T AE0 NG G AH0 L
red R EH1 D
reduce R AH0 D UW1 S
reduced R AH0 D UW1 S T
reference R EH1 F ER0 AH0 N S
referring R IH0 F ER1 IH0 NG
reform R AH0 F AO1 R M
refrigerator R AH0 F R IH1 JH ER0 EY2 T ER0
refused R AH0 F Y UW1 Z D
regardless R AH0 G AA1 R D L AH0 S
region R IY1 JH AH0 N
regret R AH0 G R EH1 T
regular R EH1 G Y AH0 L ER0
regularly R EH1 G Y AH0 L ER0 L IY0
related R IH0 L EY1 T IH0 D
relationship R IY0 L EY1 SH AH0 N SH IH2 P
relationships R IY0 L EY1 SH AH0 N SH IH2 P S
relative R EH1 L AH0 T IH0 V
relatively R EH1 L AH0 T IH0 V L IY0
relatives R EH1 L AH0 T IH0 V Z
relax R IH0 L AE1 K S
relaxing R IH0 L AE1 K S IH0 NG
relay R IY1 L EY2
release R IY0 L IY1 S
released R IY0 L IY1 S T
relevant R EH1 L AH0 V AH0 N T
religion R IH0 L IH1 JH AH0 N
religious R IH0 L IH1 JH AH0 S
rely R IH0 L AY1
remain R IH0 M EY1 N
remains R IH0 M EY1 N Z
remember R IH0 M EH1 M B ER0
remove R IY0 M UW1 V
removed R IY0 M UW1 V D
render R EH1 N D ER0
rent R EH1 N T
rental R EH1 N T AH0 L
repair R IH0 P EH1 R
repeat R IH0 P IY1 T
replace R IY2 P L EY1 S
replaced R IY2 P L EY1 S T
reply R IH0 P L AY1
report R IY0 P AO1 R T
reported R IY2 P AO1 R T IH0 D
reports R IH0 P AO1 R T S
represent R EH2 P R IH0 Z EH1 N T
request R IH0 K W EH1 S T
require R IY2 K W AY1 ER0
required R IY0 K W AY1 ER0 D
requires R IY0 K W AY1 ER0 Z
rescue R EH1 S K Y UW0
research R IY0 S ER1 CH
researchers R IY1 S ER0 CH ER0 Z
reserve R IH0 Z ER1 V
residents R EH1 Z IH0 D AH0 N T S
resources R IY1 S AO0 R S IH0 Z
respect R IH0 S P EH1 K T
respond R IH0 S P AA1 N D
response R IH0 S P AA1 N S
responsibility R IY0 S P AA2 N S AH0 B IH1 L AH0 T IY0
responsible R IY0 S P AA1 N S AH0 B AH0 L
rest R EH1 S T
restaurant R EH1 S T ER0 AA2 N T
restaurants R EH1 S T ER0 AA2 N T S
restroom R EH1 S T R UW2 M
result R IH0 Z AH1 L T
results R IH0 Z AH1 L T S
retired R IH0 T AY1 R D
retirement R IY0 T AY1 ER0 M AH0 N T
return R IH0 T ER1 N
returned R IH0 T ER1 N D
returns R IH0 T ER1 N Z
revenue R EH1 V AH0 N UW2
review R IY2 V Y UW1
revolution R EH2 V AH0 L UW1 SH AH0 N
rhoda R OW1 D AH0
rhododendron R OW2 D AH0 D EH1 N D R AH0 N
ribbon R IH1 B AH0 N
rich R IH1 CH
richard R IH1 CH ER0 D
rid R IH1 D
ride R AY1 D
ridiculous R IH0 D IH1 K Y AH0 L AH0 S
riding R AY1 D IH0 NG
right R AY1 T
rights R AY1 T S
ring R IH1 NG
rings R IH1 NG Z
riot R AY1 AH0 T
rise R AY1 Z
rising R AY1 Z IH0 NG
risk R IH1 S K
risks R IH1 S K S
rita R IY1 T AH0
river R IH1 V ER0
road R OW1 D
roads R OW1 D Z
robert R AA1 B ER0 T
robin R AA1 B AH0 N
robot R OW1 B AA2 T
rock R AA1 K
rocker R AA1 K ER0
rocket R AA1 K AH0 T
rocking R AA1 K IH0 NG
rocks R AA1 K S
rodney R AA1 D N IY0
roger R AA1 JH ER0
roland R OW1 L AH0 N D
role R OW1 L
roll R OW1 L
romantic R OW0 M AE1 N T IH0 K
romeo R OW1 M IY0 OW2
ronald R AA1 N AH0 L D
roof R UW1 F
room R UW1 M
rooms R UW1 M Z
roost R UW1 S T
root R UW1 T
roots R UW1 T S
rope R OW1 P
rory R AO1 R IY0
rosa R OW1 Z AH0
rosalind R AA1 Z AH0 L IH0 N D
rose R OW1 Z
rosemary R OW1 Z M EH2 R IY0
roses R OW1 Z IH0 Z
rosie R OW1 Z IY0
rough R AH1 F
roughly R AH1 F L IY0
round R AW1 N D
roundabout R AW1 N D AH0 B AW2 T
route R UW1 T
router R UW1 T ER0
row R OW1
rowing R OW1 IH0 NG
roy R OY1
royal R OY1 AH0 L
ruby R UW1 B IY0
rudder R AH1 D ER0
rug R AH1 G
rule R UW1 L
rules R UW1 L Z
run R AH1 N
running R AH1 N IH0 NG
runs R AH1 N Z
rupert R UW1 P ER0 T
rural R UH1 R AH0 L
rush R AH1 SH
russell R AH1 S AH0 L
russia R AH1 SH AH0
russian R AH1 SH AH0 N
ruth R UW1 TH
ryan R AY1 AH0 N
s EH1 S
sad S AE1 D
safe S EY1 F
safety S EY1 F T IY0
sage S EY1 JH
said S EH1 D
sail S EY1 L
sake S EY1 K
salary S AE1 L ER0 IY0
sale S EY1 L
sales S EY1 L Z
sally S AE1 L IY0
salt S AO1 L T
sam S AE1 M
samantha S AH0 M AE1 N TH AH0
same S EY1 M
samuel S AE1 M Y UW0 L
san S AE1 N
sand S AE1 N D
sander S AE1 N D ER0
sandra S AE1 N D R AH0
sapphire S AE1 F AY0 ER0
sara S EH1 R AH0
sarah S EH1 R AH0
sat S AE1 T
saturday S AE1 T ER0 D IY0
sauna S AO1 N AH0
save S EY1 V
saved S EY1 V D
saving S EY1 V IH0 NG
savings S EY1 V IH0 NG Z
saw S AO1
saxophone S AE1 K S AH0 F OW2 N
say S EY1
saying S EY1 IH0 NG
says S EH1 Z
scale S K EY1 L
scared S K EH1 R D
scarf S K AA1 R F
scarlet S K AA1 R L AH0 T
scary S K EH1 R IY0
scenario S IH0 N EH1 R IY0 OW0
scene S IY1 N
scenes S IY1 N Z
schedule S K EH1 JH UH0 L
scheme S K IY1 M
school S K UW1 L
schools S K UW1 L Z
science S AY1 AH0 N S
scientific S AY2 AH0 N T IH1 F IH0 K
scientists S AY1 AH0 N T IH0 S T S
sconce S K AA1 N S
sconces S K AA1 N S IH0 Z
scooter S K UW1 T ER0
score S K AO1 R
scotland S K AA1 T L AH0 N D
scott S K AA1 T
screen S K R IY1 N
sculpture S K AH1 L P CH ER0
se S EY1
sea S IY1
seal S IY1 L
sean SH AO1 N
search S ER1 CH
season S IY1 Z AH0 N
seasons S IY1 Z AH0 N Z
seat S IY1 T
seats S IY1 T S
seattle S IY0 AE1 T AH0 L
sebastian S AH0 B AE1 S CH AH0 N
second S EH1 K AH0 N D
secondary S EH1 K AH0 N D EH2 R IY0
seconds S EH1 K AH0 N D Z
secret S IY1 K R AH0 T
secretary S EH1 K R AH0 T EH2 R IY0
section S EH1 K SH AH0 N
sector S EH1 K T ER0
secure S IH0 K Y UH1 R
secured S IH0 K Y UH1 R D
security S IH0 K Y UH1 R AH0 T IY0
see S IY1
seeing S IY1 IH0 NG
seek S IY1 K
seem S IY1 M
seemed S IY1 M D
seems S IY1 M Z
seen S IY1 N
sees S IY1 Z
self S EH1 L F
sell S EH1 L
seller S EH1 L ER0
selling S EH1 L IH0 NG
senate S EH1 N AH0 T
send S EH1 N D
sending S EH1 N D IH0 NG
senior S IY1 N Y ER0
sense S EH1 N S
sensitive S EH1 N S AH0 T IH0 V
sensor S EH1 N S ER0
sensors S EH1 N S ER0 Z
sent S EH1 N T
sentence S EH1 N T AH0 N S
separate S EH1 P ER0 EY2 T
september S EH0 P T EH1 M B ER0
series S IH1 R IY0 Z
serious S IH1 R IY0 AH0 S
seriously S IH1 R IY0 AH0 S L IY0
serve S ER1 V
served S ER1 V D
server S ER1 V ER0
service S ER1 V AH0 S
services S ER1 V AH0 S AH0 Z
set S EH1 T
sets S EH1 T S
setting S EH1 T IH0 NG
seven S EH1 V AH0 N
seventeen S EH1 V AH0 N T IY1 N
seventeenth S EH1 V AH0 N T IY1 N TH
seventh S EH1 V AH0 N TH
seventieth S EH1 V AH0 N T IY0 IH0 TH
seventy S EH1 V AH0 N T IY0
several S EH1 V R AH0 L
severe S AH0 V IH1 R
sewing S OW1 IH0 NG
shade SH EY1 D
shades SH EY1 D Z
shadow SH AE1 D OW2
shaft SH AE1 F T
shall SH AE1 L
shallow SH AE1 L OW0
shame SH EY1 M
shape SH EY1 P
share SH EH1 R
shared SH EH1 R D
sharing SH EH1 R IH0 NG
shark SH AA1 R K
sharon SH AE1 R AH0 N
she SH IY1
shed SH EH1 D
sheds SH EH1 D Z
sheila SH IY1 L AH0
shelf SH EH1 L F
shelter SH EH1 L T ER0
shelves SH EH1 L V Z
shelving SH EH1 L V IH0 NG
shield SH IY1 L D
shift SH IH1 F T
shimmer SH IH1 M ER0
shine SH AY1 N
ship SH IH1 P
shirley SH ER1 L IY0
shirt SH ER1 T
shock SH AA1 K
shoe SH UW1
shoes SH UW1 Z
shoot SH UW1 T
shooting SH UW1 T IH0 NG
shop SH AA1 P
shopping SH AA1 P IH0 NG
short SH AO1 R T
shot SH AA1 T
shots SH AA1 T S
should SH UH1 D
show SH OW1
showed SH OW1 D
shower SH AW1 ER0
showing SH OW1 IH0 NG
shown SH OW1 N
shows SH OW1 Z
shrub SH R AH1 B
shrubs SH R AH1 B Z
shut SH AH1 T
shutter SH AH1 T ER0
shutters SH AH1 T ER0 Z
sick S IH1 K
side S AY1 D
sides S AY1 D Z
sidewalk S AY1 D W AO2 K
sierra S IY0 EH1 R AH0
sight S AY1 T
sign S AY1 N
signed S AY1 N D
significant S AH0 G N IH1 F IH0 K AH0 N T
signs S AY1 N Z
silent S AY1 L AH0 N T
sill S IH1 L
sills S IH1 L Z
silly S IH1 L IY0
silver S IH1 L V ER0
silvia S IH1 L V IY0 AH0
similar S IH1 M AH0 L ER0
simon S AY1 M AH0 N
simple S IH1 M P AH0 L
simply S IH1 M P L IY0
since S IH1 N S
sing S IH1 NG
single S IH1 NG G AH0 L
sink S IH1 NG K
sir S ER1
siren S AY1 R AH0 N
sister S IH1 S T ER0
sisters S IH1 S T ER0 Z
sit S IH1 T
site S AY1 T
sites S AY1 T S
sitting S IH1 T IH0 NG
situation S IH2 CH UW0 EY1 SH AH0 N
situations S IH2 CH UW0 EY1 SH AH0 N Z
six S IH1 K S
sixteen S IH0 K S T IY1 N
sixteenth S IH0 K S T IY1 N TH
sixth S IH1 K S TH
sixtieth S IH1 K S T IY0 IH0 TH
sixty S IH1 K S T IY0
size S AY1 Z
ski S K IY1
skill S K IH1 L
skills S K IH1 L Z
skin S K IH1 N
skirting S K ER1 T IH0 NG
skis S K IY1 Z
sky S K AY1
skylight S K AY1 L AY2 T
slate S L EY1 T
sledge S L EH1 JH
sleep S L IY1 P
sleeping S L IY1 P IH0 NG
slide S L AY1 D
slightly S L AY1 T L IY0
slow S L OW1
slowly S L OW1 L IY0
small S M AO1 L
smaller S M AO1 L ER0
smart S M AA1 R T
smell S M EH1 L
smile S M AY1 L
smith S M IH1 TH
smoke S M OW1 K
smoker S M OW1 K ER0
smoking S M OW1 K IH0 NG
snake S N EY1 K
snooker S N UH1 K ER0
snow S N OW1
snug S N AH1 G
so S OW1
soap S OW1 P
soccer S AA1 K ER0
social S OW1 SH AH0 L
society S AH0 S AY1 AH0 T IY0
socket S AA1 K AH0 T
sockets S AA1 K AH0 T S
sofa S OW1 F AH0
sofas S OW1 F AH0 Z
soffit S AO1 F IH0 T
sofia S OW0 F IY1 AH0
soft S AA1 F T
software S AO1 F T W EH2 R
solar S OW1 L ER0
sold S OW1 L D
soldiers S OW1 L JH ER0 Z
solid S AA1 L AH0 D
solution S AH0 L UW1 SH AH0 N
solve S AA1 L V
some S AH1 M
somebody S AH1 M B AA2 D IY0
somehow S AH1 M HH AW2
someone S AH1 M W AH2 N
something S AH1 M TH IH0 NG
sometimes S AH0 M T AY1 M Z
somewhat S AH1 M W AH1 T
somewhere S AH1 M W EH2 R
son S AH1 N
song S AO1 NG
songs S AO1 NG Z
sonia S OW1 N Y AA2
soon S UW1 N
sophia S OW0 F IY1 AH0
sophie S OW1 F IY0
sorry S AA1 R IY0
sort S AO1 R T
sorting S AO1 R T IH0 NG
sorts S AO1 R T S
soul S OW1 L
sound S AW1 N D
sounds S AW1 N D Z
source S AO1 R S
sources S AO1 R S AH0 Z
south S AW1 TH
southeast S AW2 TH IY1 S T
southern S AH1 DH ER0 N
southwest S AW2 TH W EH1 S T
spa S P AA1
space S P EY1 S
spanish S P AE1 N IH0 SH
spare S P EH1 R
sparkle S P AA1 R K AH0 L
sparrow S P EH1 R OW0
speak S P IY1 K
speaker S P IY1 K ER0
speakers S P IY1 K ER0 Z
speaking S P IY1 K IH0 NG
special S P EH1 SH AH0 L
species S P IY1 SH IY0 Z
specific S P AH0 S IH1 F IH0 K
specifically S P AH0 S IH1 F IH0 K L IY0
speech S P IY1 CH
speed S P IY1 D
spell S P EH1 L
spend S P EH1 N D
spending S P EH1 N D IH0 NG
spent S P EH1 N T
spider S P AY1 D ER0
spinney S P IH1 N IY0
spiral S P AY1 R AH0 L
spirit S P IH1 R AH0 T
split S P L IH1 T
spoke S P OW1 K
spokesman S P OW1 K S M AH0 N
sport S P AO1 R T
sports S P AO1 R T S
spot S P AA1 T
spotlight S P AA1 T L AY2 T
spotlights S P AA1 T L AY2 T S
spots S P AA1 T S
spout S P AW1 T
spread S P R EH1 D
spring S P R IH1 NG
sprinkler S P R IH1 NG K L ER0
spur S P ER1
square S K W EH1 R
squash S K W AA1 SH
squirrel S K W ER1 AH0 L
st S T R IY1 T
stable S T EY1 B AH0 L
stables S T EY1 B AH0 L Z
stack S T AE1 K
stadium S T EY1 D IY0 AH0 M
staff S T AE1 F
stag S T AE1 G
stage S T EY1 JH
stair S T EH1 R
staircase S T EH1 R K EY2 S
stairs S T EH1 R Z
stairway S T EH1 R W EY2
stairwell S T EH1 R W EH2 L
stall S T AO1 L
stand S T AE1 N D
standard S T AE1 N D ER0 D
standards S T AE1 N D ER0 D Z
standby S T AE1 N D B AY1
standing S T AE1 N D IH0 NG
stands S T AE1 N D Z
stanley S T AE1 N L IY0
star S T AA1 R
starboard S T AA1 R B ER0 D
starlight S T AA1 R L AY2 T
starling S T AA1 R L IH0 NG
stars S T AA1 R Z
start S T AA1 R T
started S T AA1 R T IH0 D
starting S T AA1 R T IH0 NG
starts S T AA1 R T S
state S T EY1 T
statement S T EY1 T M AH0 N T
states S T EY1 T S
station S T EY1 SH AH0 N
stations S T EY1 SH AH0 N Z
statue S T AE1 CH UW2
status S T AE1 T AH0 S
stay S T EY1
stayed S T EY1 D
staying S T EY1 IH0 NG
steady S T EH1 D IY0
steal S T IY1 L
steam S T IY1 M
steamer S T IY1 M ER0
stella S T EH1 L AH0
step S T EH1 P
stephen S T IY1 V AH0 N
steps S T EH1 P S
stereo S T EH1 R IY0 OW2
stern S T ER1 N
steve S T IY1 V
steven S T IY1 V AH0 N
stewart S T UW1 ER0 T
stick S T IH1 K
still S T IH1 L
stock S T AA1 K
stone S T OW1 N
stones S T OW1 N Z
stood S T UH1 D
stool S T UW1 L
stools S T UW1 L Z
stop S T AA1 P
stopped S T AA1 P T
storage S T AO1 R AH0 JH
store S T AO1 R
storeroom S T AO1 R R UW2 M
stores S T AO1 R Z
storey S T AO1 R IY0
stories S T AO1 R IY0 Z
storm S T AO1 R M
story S T AO1 R IY0
stove S T OW1 V
straight S T R EY1 T
strange S T R EY1 N JH
strategy S T R AE1 T AH0 JH IY0
stream S T R IY1 M
street S T R IY1 T
streets S T R IY1 T S
strength S T R EH1 NG K TH
stress S T R EH1 S
stretch S T R EH1 CH
strike S T R AY1 K
strip S T R IH1 P
strips S T R IH1 P S
stroller S T R OW1 L ER0
strong S T R AO1 NG
stronger S T R AO1 NG ER0
structure S T R AH1 K CH ER0
struggle S T R AH1 G AH0 L
struggling S T R AH1 G AH0 L IH0 NG
stuart S T UW1 ER0 T
stuck S T AH1 K
student S T UW1 D AH0 N T
students S T UW1 D AH0 N T S
studies S T AH1 D IY0 Z
studio S T UW1 D IY0 OW2
studios S T UW1 D IY0 OW2 Z
study S T AH1 D IY0
studying S T AH1 D IY0 IH0 NG
stuff S T AH1 F
sty S T AY1
style S T AY1 L
sub S AH1 B
subject S AH0 B JH EH1 K T
submission S AH0 B M IH1 SH AH0 N
success S AH0 K S EH1 S
successful S AH0 K S EH1 S F AH0 L
such S AH1 CH
sudden S AH1 D AH0 N
suddenly S AH1 D AH0 N L IY0
sue S UW1
suffer S AH1 F ER0
suffered S AH1 F ER0 D
suffering S AH1 F ER0 IH0 NG
sugar SH UH1 G ER0
suggest S AH0 JH EH1 S T
suggested S AH0 JH EH1 S T IH0 D
suggests S AH0 JH EH1 S T S
suit S UW1 T
suite S W IY1 T
summer S AH1 M ER0
sump S AH1 M P
sun S AH1 N
sunday S AH1 N D EY2
sunflower S AH1 N F L AW2 ER0
sunlight S AH1 N L AY2 T
sunny S AH1 N IY0
sunrise S AH1 N R AY2 Z
sunroom S AH1 N R UW2 M
sunset S AH1 N S EH2 T
super S UW1 P ER0
supper S AH1 P ER0
supply S AH0 P L AY1
support S AH0 P AO1 R T
supported S AH0 P AO1 R T IH0 D
supporting S AH0 P AO1 R T IH0 NG
suppose S AH0 P OW1 Z
supposed S AH0 P OW1 Z D
sure SH UH1 R
surely SH UH1 R L IY0
surface S ER1 F AH0 S
surfboard S ER1 F B AO2 R D
surgery S ER1 JH ER0 IY0
surprise S ER0 P R AY1 Z
surprised S ER0 P R AY1 Z D
surprising S ER0 P R AY1 Z IH0 NG
survey S ER0 V EY1
survive S ER0 V AY1 V
survivor S ER0 V AY1 V ER0
susan S UW1 Z AH0 N
suspect S AH0 S P EH1 K T
suzanne S UW0 Z AE1 N
swallow S W AA1 L OW0
swan S W AA1 N
swear S W EH1 R
sweet S W IY1 T
swift S W IH1 F T
swimming S W IH1 M IH0 NG
swing S W IH1 NG
switch S W IH1 CH
switches S W IH1 CH AH0 Z
sword S AO1 R D
sylvia S IH1 L V IY0 AH0
system S IH1 S T AH0 M
systems S IH1 S T AH0 M Z
t T IY1
table T EY1 B AH0 L
tabletop T EY1 B AH0 L T AA2 P
tack T AE1 K
tag T AE1 G
take T EY1 K
taken T EY1 K AH0 N
takes T EY1 K S
taking T EY1 K IH0 NG
talent T AE1 L AH0 N T
talk T AO1 K
talked T AO1 K T
talking T AO1 K IH0 NG
talks T AO1 K S
tall T AO1 L
tango T AE1 NG G OW0
tank T AE1 NG K
tanks T AE1 NG K S
tanya T AA1 N Y AH0
tap T AE1 P
tape T EY1 P
tapestry T AE1 P AH0 S T R IY0
taps T AE1 P S
target T AA1 R G AH0 T
task T AE1 S K
taste T EY1 S T
taught T AO1 T
tax T AE1 K S
taxes T AE1 K S AH0 Z
tea T IY1
teach T IY1 CH
teacher T IY1 CH ER0
teachers T IY1 CH ER0 Z
teaching T IY1 CH IH0 NG
teal T IY1 L
team T IY1 M
teams T IY1 M Z
tech T EH1 K
technical T EH1 K N IH0 K AH0 L
technically T EH1 K N IH0 K AH0 L IY0
technology T EH0 K N AA1 L AH0 JH IY0
teddy T EH1 D IY0
teenager T IY1 N EY2 JH ER0
teenagers T IY1 N EY2 JH ER0 Z
teeth T IY1 TH
television T EH1 L AH0 V IH2 ZH AH0 N
tell T EH1 L
telling T EH1 L IH0 NG
tells T EH1 L Z
temperature T EH1 M P R AH0 CH ER0
temporary T EH1 M P ER0 EH2 R IY0
ten T EH1 N
tenant T EH1 N AH0 N T
tend T EH1 N D
tennis T EH1 N AH0 S
tent T EH1 N T
tenth T EH1 N TH
teresa T ER0 IY1 S AH0
term T ER1 M
terminal T ER1 M AH0 N AH0 L
terms T ER1 M Z
terrace T EH1 R AH0 S
terraces T EH1 R AH0 S AH0 Z
terrible T EH1 R AH0 B AH0 L
terry T EH1 R IY0
test T EH1 S T
tested T EH1 S T IH0 D
testing T EH1 S T IH0 NG
tests T EH1 S T S
texas T EH1 K S AH0 S
text T EH1 K S T
than DH AE1 N
thank TH AE1 NG K
thanks TH AE1 NG K S
that DH AE1 T
the DH AH0
theater TH IY1 AH0 T ER0
theatre TH IY1 AH0 T ER0
their DH EH1 R
them DH EH1 M
theme TH IY1 M
themselves DH EH0 M S EH1 L V Z
then DH EH1 N
theo TH IY1 OW0
theodore TH IY1 AH0 D AO2 R
theory TH IH1 R IY0
therapy TH EH1 R AH0 P IY0
there DH EH1 R
therefore DH EH1 R F AO2 R
theresa T ER0 IY1 S AH0
thermostat TH ER1 M AH0 S T AE2 T
these DH IY1 Z
they DH EY1
thicket TH IH1 K IH0 T
thin TH IH1 N
thing TH IH1 NG
things TH IH1 NG Z
think TH IH1 NG K
thinking TH IH1 NG K IH0 NG
thinks TH IH1 NG K S
third TH ER1 D
thirteen TH ER1 T IY1 N
thirteenth TH ER1 T IY1 N TH
thirtieth TH ER1 T IY0 AH0 TH
thirty TH ER1 D IY2
this DH IH1 S
thistle TH IH1 S AH0 L
thomas T AA1 M AH0 S
those DH OW1 Z
though DH OW1
thought TH AO1 T
thoughts TH AO1 T S
thousand TH AW1 Z AH0 N D
thousands TH AW1 Z AH0 N D Z
thousandth TH AW1 Z AH0 N D TH
thread TH R EH1 D
threat TH R EH1 T
three TH R IY1
threshold TH R EH1 SH OW2 L D
threw TH R UW1
through TH R UW1
throughout TH R UW0 AW1 T
throw TH R OW1
throwing TH R OW1 IH0 NG
thrown TH R OW1 N
thunder TH AH1 N D ER0
thursday TH ER1 Z D EY2
thus DH AH1 S
thyme TH AY1 M
ticket T IH1 K AH0 T
tickets T IH1 K AH0 T S
tied T AY1 D
tiger T AY1 G ER0
tight T AY1 T
til T IH1 L
tile T AY1 L
tiled T AY1 L D
tiles T AY1 L Z
till T IH1 L
tim T IH1 M
timber T IH1 M B ER0
time T AY1 M
times T AY1 M Z
timothy T IH1 M AH0 TH IY0
tina T IY1 N AH0
tiny T AY1 N IY0
tip T IH1 P
tips T IH1 P S
tired T AY1 ER0 D
title T AY1 T AH0 L
to T UW1
toad T OW1 D
toaster T OW1 S T ER0
toby T OW1 B IY0
today T AH0 D EY1
together T AH0 G EH1 DH ER0
toilet T OY1 L AH0 T
told T OW1 L D
tom T AA1 M
tomorrow T AH0 M AA1 R OW2
ton T AH1 N
tone T OW1 N
tonight T AH0 N AY1 T
tons T AH1 N Z
tony T OW1 N IY0
too T UW1
took T UH1 K
tool T UW1 L
toolbox T UW1 L B AO2 K S
tools T UW1 L Z
top T AA1 P
topic T AA1 P IH0 K
topics T AA1 P IH0 K S
torch T AO1 R CH
tortoise T AO1 R T AH0 S
total T OW1 T AH0 L
totally T OW1 T AH0 L IY0
touch T AH1 CH
tough T AH1 F
tour T UH1 R
tournament T UH1 R N AH0 M AH0 N T
toward T AH0 W AO1 R D
towards T AH0 W AO1 R D Z
towel T AW1 AH0 L
tower T AW1 ER0
town T AW1 N
toy T OY1
toys T OY1 Z
track T R AE1 K
tractor T R AE1 K T ER0
tracy T R EY1 S IY0
trade T R EY1 D
trading T R EY1 D IH0 NG
traditional T R AH0 D IH1 SH AH0 N AH0 L
traffic T R AE1 F IH0 K
trail T R EY1 L
trailer T R EY1 L ER0
train T R EY1 N
trained T R EY1 N D
training T R EY1 N IH0 NG
trampoline T R AE2 M P AH0 L IY1 N
transfer T R AE0 N S F ER1
travel T R AE1 V AH0 L
traveling T R AE1 V AH0 L IH0 NG
treadmill T R EH1 D M IH2 L
treat T R IY1 T
treated T R IY1 T IH0 D
treatment T R IY1 T M AH0 N T
tree T R IY1
trees T R IY1 Z
trellis T R EH1 L AH0 S
trend T R EH1 N D
trevor T R EH1 V ER0
trial T R AY1 AH0 L
triangle T R AY1 AE2 NG G AH0 L
trick T R IH1 K
tried T R AY1 D
tries T R AY1 Z
trip T R IH1 P
triple T R IH1 P AH0 L
trombone T R AA0 M B OW1 N
troops T R UW1 P S
trophy T R OW1 F IY0
tropical T R AA1 P IH0 K AH0 L
trouble T R AH1 B AH0 L
trough T R AO1 F
troughs T R AO1 F S
truck T R AH1 K
true T R UW1
truly T R UW1 L IY0
trumpet T R AH1 M P AH0 T
trunk T R AH1 NG K
trust T R AH1 S T
truth T R UW1 TH
try T R AY1
trying T R AY1 IH0 NG
tub T AH1 B
tube T UW1 B
tubes T UW1 B Z
tuesday T UW1 Z D IY0
tulip T UW1 L AH0 P
tulips T UW1 L AH0 P S
tumble T AH1 M B AH0 L
tunnel T AH1 N AH0 L
turkey T ER1 K IY0
turn T ER1 N
turned T ER1 N D
turning T ER1 N IH0 NG
turns T ER1 N Z
turquoise T ER1 K W OY0 Z
turret T ER1 AH0 T
turtle T ER1 T AH0 L
tv T IY1 V IY1
twelfth T W EH1 L F TH
twelve T W EH1 L V
twentieth T W EH1 N T IY0 AH0 TH
twenty T W EH1 N T IY0
twice T W AY1 S
twilight T W AY1 L AY2 T
twin T W IH1 N
twinkle T W IH1 NG K AH0 L
twins T W IH1 N Z
two T UW1
type T AY1 P
types T AY1 P S
typical T IH1 P AH0 K AH0 L
typically T IH1 P IH0 K L IY0
u Y UW1
ugly AH1 G L IY0
ultimately AH1 L T AH0 M AH0 T L IY0
umbrella AH0 M B R EH1 L AH0
un AH1 N
unable AH0 N EY1 B AH0 L
uncle AH1 NG K AH0 L
uncomfortable AH0 N K AH1 M F ER0 T AH0 B AH0 L
under AH1 N D ER0
underground AH1 N D ER0 G R AW2 N D
understand AH2 N D ER0 S T AE1 N D
understanding AH2 N D ER0 S T AE1 N D IH0 NG
understood AH2 N D ER0 S T UH1 D
unemployment AH2 N IH0 M P L OY1 M AH0 N T
unfortunately AH0 N F AO1 R CH AH0 N AH0 T L IY0
unicorn Y UW1 N IH0 K AO2 R N
uniform Y UW1 N AH0 F AO2 R M
union Y UW1 N Y AH0 N
unique Y UW0 N IY1 K
unit Y UW1 N AH0 T
united Y UW0 N AY1 T IH0 D
units Y UW1 N AH0 T S
universe Y UW1 N AH0 V ER2 S
university Y UW2 N AH0 V ER1 S AH0 T IY0
unless AH0 N L EH1 S
unlike AH0 N L AY1 K
unlikely AH0 N L AY1 K L IY0
until AH0 N T IH1 L
unusual AH0 N Y UW1 ZH UW2 AH0 L
up AH1 P
update AH0 P D EY1 T
upgrade AH0 P G R EY1 D
upon AH0 P AA1 N
upper AH1 P ER0
ups AH1 P S
upset AH0 P S EH1 T
upstairs AH0 P S T EH1 R Z
urban ER1 B AH0 N
urn ER1 N
ursula ER1 S AH0 L AH0
us AH1 S
usa Y UW2 EH2 S EY1
use Y UW1 S
used Y UW1 Z D
useful Y UW1 S F AH0 L
user Y UW1 Z ER0
users Y UW1 Z ER0 Z
uses Y UW1 S AH0 Z
using Y UW1 Z IH0 NG
usual Y UW1 ZH AH0 W AH0 L
usually Y UW1 ZH AH0 W AH0 L IY0
utility Y UW0 T IH1 L AH0 T IY0
v V IY1
vacation V EY0 K EY1 SH AH0 N
vaccine V AE2 K S IY1 N
vacuum V AE1 K Y UW0 M
valerie V AE1 L ER0 IY0
valley V AE1 L IY0
valuable V AE1 L Y AH0 B AH0 L
value V AE1 L Y UW0
values V AE1 L Y UW0 Z
valve V AE1 L V
van V AE1 N
vanessa V AH0 N EH1 S AH0
vanity V AE1 N AH0 T IY0
variety V ER0 AY1 AH0 T IY0
various V EH1 R IY0 AH0 S
varnish V AA1 R N IH0 SH
vase V EY1 S
vast V AE1 S T
vault V AO1 L T
vegas V EY1 G AH0 S
vehicle V IY1 HH IH0 K AH0 L
vehicles V IY1 HH IH0 K AH0 L Z
vent V EH1 N T
ventilation V EH2 N T AH0 L EY1 SH AH0 N
ventilator V EH1 N T AH0 L EY2 T ER0
vera V EH1 R AH0
veranda V ER0 AE1 N D AH0
verge V ER1 JH
veronica V ER0 AA1 N IH0 K AH0
version V ER1 ZH AH0 N
very V EH1 R IY0
vestibule V EH1 S T IH0 B Y UW2 L
via V AY1 AH0
vice V AY1 S
victor V IH1 K T ER0
victoria V IH0 K T AO1 R IY0 AH0
victory V IH1 K T ER0 IY0
video V IH1 D IY0 OW0
videos V IH1 D IY0 OW0 Z
view V Y UW1
views V Y UW1 Z
village V IH1 L AH0 JH
vincent V IH1 N S AH0 N T
vineyard V IH1 N Y ER0 D
vintage V IH1 N T IH0 JH
viola V AY0 OW1 L AH0
violence V AY1 AH0 L AH0 N S
violent V AY1 AH0 L AH0 N T
violet V AY1 AH0 L IH0 T
violin V AY0 AH0 L IH1 N
virginia V ER0 JH IH1 N Y AH0
virus V AY1 R AH0 S
vise V AY1 S
vision V IH1 ZH AH0 N
visit V IH1 Z IH0 T
visitor V IH1 Z IH0 T ER0
visitors V IH1 Z IH0 T ER0 Z
vivian V IH1 V IY0 AH0 N
voice V OY1 S
volunteer V AA2 L AH0 N T IH1 R
vote V OW1 T
voted V OW1 T IH0 D
voters V OW1 T ER0 Z
votes V OW1 T S
voting V OW1 T IH0 NG
vs V IY1 EH1 S
w D AH1 B AH0 L Y UW0
wage W EY1 JH
wainscot W EY1 N S K AH0 T
wait W EY1 T
waiting W EY1 T IH0 NG
wake W EY1 K
waking W EY1 K IH0 NG
walk W AO1 K
walked W AO1 K T
walking W AO1 K IH0 NG
wall W AO1 L
walls W AO1 L Z
walnut W AO1 L N AH2 T
walter W AO1 L T ER0
wanda W AA1 N D AH0
want W AA1 N T
wanted W AO1 N T IH0 D
wanting W AA1 N T IH0 NG
wants W AA1 N T S
war W AO1 R
wardrobe W AO1 R D R OW2 B
wardrobes W AO1 R D R OW2 B Z
warm W AO1 R M
warming W AO1 R M IH0 NG
warning W AO1 R N IH0 NG
wars W AO1 R Z
was W AA1 Z
wash W AA1 SH
washer W AA1 SH ER0
washington W AA1 SH IH0 NG T AH0 N
washroom W AA1 SH R UW2 M
waste W EY1 S T
watch W AA1 CH
watched W AA1 CH T
watching W AA1 CH IH0 NG
water W AO1 T ER0
waterfall W AO1 T ER0 F AO2 L
wave W EY1 V
way W EY1
wayne W EY1 N
ways W EY1 Z
we W IY1
weak W IY1 K
wealth W EH1 L TH
wear W EH1 R
wearing W EH1 R IH0 NG
weather W EH1 DH ER0
web W EH1 B
website W EH1 B S AY2 T
wedding W EH1 D IH0 NG
wednesday W EH1 N Z D IY0
week W IY1 K
weekday W IY1 K D EY2
weekend W IY1 K EH2 N D
weeks W IY1 K S
weight W EY1 T
weights W EY1 T S
weird W IH1 R D
welcome W EH1 L K AH0 M
welder W EH1 L D ER0
well W EH1 L
wendy W EH1 N D IY0
went W EH1 N T
were W ER1
west W EH1 S T
western W EH1 S T ER0 N
wet W EH1 T
whale W EY1 L
wharf W AO1 R F
what W AH1 T
whatever W AH2 T EH1 V ER0
wheel W IY1 L
when W EH1 N
whenever W EH0 N EH1 V ER0
where W EH1 R
whereas W EH0 R AE1 Z
whether W EH1 DH ER0
which W IH1 CH
while W AY1 L
whirlpool W ER1 L P UW2 L
whiskey W IH1 S K IY0
white W AY1 T
who HH UW1
whoa W OW1
whoever HH UW0 EH1 V ER0
whole HH OW1 L
whom HH UW1 M
whose HH UW1 Z
why W AY1
wide W AY1 D
wife W AY1 F
wild W AY1 L D
will W IH1 L
william W IH1 L Y AH0 M
willing W IH1 L IH0 NG
willow W IH1 L OW2
win W IH1 N
winch W IH1 N CH
wind W AY1 N D
window W IH1 N D OW0
windows W IH1 N D OW0 Z
wine W AY1 N
wing W IH1 NG
winifred W IH1 N IH0 F R IH0 D
winner W IH1 N ER0
winning W IH1 N IH0 NG
wins W IH1 N Z
winter W IH1 N T ER0
wireless W AY1 R L IH0 S
wise W AY1 Z
wish W IH1 SH
with W IH1 DH
within W IH0 DH IH1 N
without W IH0 TH AW1 T
wolf W UH1 L F
woman W UH1 M AH0 N
women W IH1 M AH0 N
won W AH1 N
wonder W AH1 N D ER0
wonderful W AH1 N D ER0 F AH0 L
wondering W AH1 N D ER0 IH0 NG
wood W UH1 D
woodland W UH1 D L AE2 N D
woods W UH1 D Z
word W ER1 D
words W ER1 D Z
work W ER1 K
worked W ER1 K T
workers W ER1 K ER0 Z
working W ER1 K IH0 NG
workroom W ER1 K R UW2 M
works W ER1 K S
workshop W ER1 K SH AA2 P
world W ER1 L D
worried W ER1 IY0 D
worry W ER1 IY0
worse W ER1 S
worst W ER1 S T
worth W ER1 TH
would W UH1 D
wow W AW1
wren R EH1 N
write R AY1 T
writer R AY1 T ER0
writing R AY1 T IH0 NG
written R IH1 T AH0 N
wrong R AO1 NG
wrote R OW1 T
x EH1 K S
y W AY1
ya Y AA1
yankee Y AE1 NG K IY0
yard Y AA1 R D
yards Y AA1 R D Z
yea Y EY1
yeah Y AE1
year Y IH1 R
years Y IH1 R Z
yellow Y EH1 L OW0
yep Y EH1 P
yes Y EH1 S
yesterday Y EH1 S T ER0 D EY2
yet Y EH1 T
yo Y OW1
yoga Y OW1 G AH0
york Y AO1 R K
you Y UW1
young Y AH1 NG
younger Y AH1 NG G ER0
your Y AO1 R
yours Y UH1 R Z
yourself Y ER0 S EH1 L F
youth Y UW1 TH
yup Y AH1 P
yvonne IH2 V AA1 N
z Z IY1
zebra Z IY1 B R AH0
zero Z IH1 R OW0
zoe Z OW1 IY0
zone Z OW1 N
zoo Z UW1
zulu Z UW1 L UW2
"""
