namespace ClimateLens.Logs.Describe.Words;

/// <summary>
/// Words of the trade in English, Dutch, German, Danish, French, Spanish and Italian, without accents and in lower case. A plain word
/// stands alone; a star stands for more letters, so that <c>luft*</c> begins a word, <c>*temp</c> ends one and <c>*straling*</c> is any
/// part of one. The longest word that fits a place in a header counts, the shorter ones inside it do not. Common practice, no source.
/// </summary>
internal static partial class WordTable
{
    /// <summary>Every idea with its words, several words joined by '_' where they stand one after the other.</summary>
    public static IReadOnlyList<(Idea Idea, string Words)> All { get; } = [.. Measured, .. Places, .. Steered, .. Figures, .. Times, .. Keys, .. Records];

    private static (Idea Idea, string Words)[] Measured =>
    [
        (Idea.Temperature, "temp tmp temper t ta tair tin tout tsoil tleaf tcanopy tcan tpipe temperatur temperature temperatuur temperatura *temperatur* *temperatuur* *temperatura* *temp tempe temp* luftt luchtt planttemperat* pflanzentemperat* plantetemperat* mattemperat* mattentemperat* beettemperat*"),
        (Idea.Humidity, "rh rv hr ur rlf rf r_h r_v r_f h_r u_r rel_f relf relhum hum humid humidity humidite humedad umidita *humid* *feucht* *vocht* *fugt* hygro* hygrometr* hygrometrie igrometr* rhin rhout"),
        (Idea.Absolute, "abs absolute absolut* absoluut absoluta assoluta absolue av ah mixing_ratio humidity_ratio vapour_pressure vapor_pressure dampdruk dampfdruck damptryk"),
        (Idea.VapourPressureDeficit, "vpd dpv vapour_pressure_deficit vapor_pressure_deficit dampdrukdeficit* dampfdruckdefizit* damptryksdeficit* deficit_de_pression_de_vapeur deficit_pression_vapeur deficit_de_presion_de_vapor deficit_presion_vapor deficit_di_pressione_di_vapore deficit_pressione_vapore deficit_pression_de_vapeur"),
        (Idea.HumidityDeficit, "vochtdeficit* vochtdef* vd hd dh feuchtedefizit* feuchtigkeitsdefizit* sattigungsdefizit* saettigungsdefizit* *defizit* fugtighedsdeficit* fugtdeficit* maetningsdeficit* humidity_deficit moisture_deficit saturation_deficit deficit_hydrique deficit_hygrometrique deficit_de_saturation deficit_de_humedad deficit_de_saturacion deficit_di_umidita deficit_di_saturazione deficit *deficit"),
        (Idea.DewPoint, "dew dewp dewpt dewpoint dew_point dauwpunt* *dauwpunt *taupunkt* *dugpunkt* point_de_rosee pt_rosee rosee punto_de_rocio punto_rocio rocio punto_di_rugiada punto_rugiada rugiada td tdew"),
        (Idea.WetBulb, "wet_bulb wetbulb twet twb natte_bol nattebol natbol feuchtkugel* feuchttemperatur vad_temperatur vadtemperatur vad_foler bulbe_humide thermometre_humide bulbo_humedo bulbo_umido temperatura_humeda termometro_humedo"),
        (Idea.DryBulb, "dry_bulb drybulb tdry droge_bol drogebol trockenkugel* trockentemperatur tor_temperatur tortemperatur bulbe_sec bulbo_seco bulbo_secco"),
        (Idea.CarbonDioxide, "co2 carbon_dioxide carbondioxide kohlendioxid* koolzuur* kooldioxide kuldioxid* dioxyde_de_carbone gaz_carbonique dioxido_de_carbono anhidrido_carbonico anidride_carbonica biossido_di_carbonio"),
        (Idea.Radiation, "radiation* rad irrad* solar* pyran* piran* solarimeter* solarimetr* insolation *straling* *strahlung* *stralung* rayonnement* radiacion* radiazion* irraggiamento* global globaal globale globalstr* glob srad rn slr*"),
        (Idea.Sun, "sun sunlight zon zonlicht sonne sonnenlicht sol sollys soleil sole sunshine"),
        (Idea.Light, "light* licht* *licht lys lysmaling* lysintensitet lysstyrke lysniveau *lys lumiere* luminosit* eclairement luz luminosidad iluminacion luce illuminamento illuminance lux klux brightness helligkeit* beleuchtungsstarke luminance intensidad_luminosa"),
        (Idea.Par, "par ppfd ppf pfd quantum* photosynth* fotosynth* fotosint* umol"),
        (Idea.Wind, "wind* vind* viento vento anemo* du_vent vent_vitesse force_du_vent ws wd windsnelheid windrichting wspd wspeed wndspd wdir"),
        (Idea.Gust, "gust* windstoot* windbo* windboe* vindstod* rafale* racha* raffic* boen"),
        (Idea.Speed, "speed *speed spd vel velocity snelheid *snelheid *geschwindigkeit *hastighed vitesse velocidad velocita ws windsp wspd wspeed wndspd"),
        (Idea.Direction, "dir direction *direction *richting *richtung *retning direccion direzione winddir wd wdir"),
        (Idea.Rain, "rain* precip* *regen regen* neerslag* niederschlag* regn* nedbor* pluie* pluvio* lluvia* piogg* prcp rainfall"),
        (Idea.Pressure, "pressure press baro* luchtdruk* luftdruck* lufttryk* pression* presion* qnh mslp slp airpress* atmospheric_pressure presion_atmosferica pression_atmospherique pressione_atmosferica patm"),
        (Idea.Moisture, "moisture vwc vw watergehalte* wassergehalt* vandindhold* teneur_en_eau contenuto_idrico contenido_de_agua tensio* humedad_del_suelo humedad_suelo umidita_del_suolo umidita_suolo humidite_du_sol humidite_sol bodenfeuchte* bodemvocht* jordfugt* substratfeuchte* substraatvocht*"),
        (Idea.Wetness, "wetness natheid bladnat* blattnasse* blattnaesse* bladfugt* humectation* mouillure* humectacion* mojado bagnatura* lws lwd leafwet* leaf_wet lwet"),
        (Idea.Conductivity, "ec conductivity leitfahigkeit* leitfaehigkeit* ledningsevne ledetal conductivite conductividad conducibilita geleidbaarheid"),
        (Idea.Acidity, "ph acidity zuurgraad acidite"),
    ];

    private static (Idea Idea, string Words)[] Places =>
    [
        (Idea.Air, "air lucht* luft* aire aria air* ambient meetbox messbox"),
        (Idea.Inside, "inside* indoor* in int binnen* kas kaslucht* kas* innen* gewachshaus* gewaechshaus* gwh inde indendors drivhus* vaeksthus* interieur* interior* interno interna internal serre* invernadero* serra greenhouse* glasshouse* gh room raum* rum ambiance ambiente innent"),
        (Idea.Outside, "outside* outdoor* out outs outdoors ext exterieur* exterior* external esterno esterna estern* buiten* aussen* ausen* ude ude* udendors exterieure weather* meteo* weer* wetter* vejr* fuori"),
        (Idea.Leaf, "leaf* foliage blad bladtemp* *blad blatt* plant_temp* planttemp* plantetemp* planttemperat* pflanzentemperat* plantetemperat* pflanzentemp* feuille* foliaire* hoja* foliar* foglia* fogliar* leaft tleaf"),
        (Idea.Canopy, "canopy* crop* gewas* bestand bestandes* bestandstemp* afgrode* couvert cultivo coltura in_crop tcanopy tcan"),
        (Idea.Medium, "medium substrat* substraat* soil* slab* matte* potgrond grond* bodem* boden* topf* potte potting jord* root* wortel* wurzel* rodzone suelo sustrat* suolo terreno terriccio terreau peat coco du_sol growing_medium tsoil mat mattemp* mattemperat* mattentemp* mattentemperat* beettemp* beettemperat*"),
        (Idea.Pipe, "pipe* *buis buis* *buizen *rohr rohr* heizrohr* *ror ror* varmeror* tube* tuyau* tubo* tuberia* tubi tubazion* rail buisrail* tpipe"),
        (Idea.Supply, "flow supply aanvoer* vorlauf* fremlob* depart mandata impulsion ida"),
        (Idea.Return, "return* retour* rucklauf* ruecklauf* returlob* retorno ritorno"),
        (Idea.Cover, "glass glas verre vidrio vetro kasdek dek cover cladding roof dach dak"),
        (Idea.Boiler, "boiler* ketel* kessel* kedel* chaudiere* caldera* caldaia* buffer*"),
    ];

    private static (Idea Idea, string Words)[] Steered =>
    [
        (Idea.Vent, "vent vents window* *raam *raams raam* *ramen luchtraam* raamstand* luchting* luftung* lueftung* dachluftung* *klappe* *klappen fenster* *vindue* *luge luger* ouvrant* aeration ouverture* faitage chassis ventana* cenital* finestra finestre colmo ridge_vent roof_vent side_vent rooflight*"),
        (Idea.Ventilation, "ventilation* ventilatie* ventilacion* ventilazion* ventiler* beluchting* entluft*"),
        (Idea.LeeSide, "lee leeside lee_side leeward luw luwe luwzijde lijzijde leeseite lee_seite laeside lae lae_side sous_le_vent sotavento sottovento"),
        (Idea.WindSide, "windward wind_side windside windzijde windz luv luvseite windseite luv_seite vindside vind_side au_vent barlovento sopravvento sopravento"),
        (Idea.Screen, "screen* *scherm scherm* *doek *doeken doek* *schirm schirm* *schatt* schattierung* verdunk* gardin* *gardin *gardiner *skygge* morklaegning* ecran* ombrage* ombriere* toile* occultation pantalla* malla* sombreo schermo schermi telo teli ombreggi* oscurant* curtain* shade* shading blackout* rideau* cortina*"),
        (Idea.Heating, "heat* stook* verwarm* heiz* *heizung varme* *varme opvarmning* chauff* calefac* riscald*"),
        (Idea.Valve, "valve* *klep *kleppen kraan* magneetklep* ventil ventile *ventil *ventile vanne* electrovanne* electrovalvula* valvul* valvol* elettrovalvol* solenoid* magnetventil*"),
        (Idea.Mixing, "mengklep* mischer* mischventil* blandeventil* shunt* mixing* melangeur* mezcladora miscelatric*"),
        (Idea.Irrigation, "irrigat* irrigacion irrigazion* watering* gietbeurt* giet* gegoten* watergift* druppel* bevloei* bewasser* bewaesser* giess* tropf* vanding* *vanding arrosage* riego* annaffi* goteo goutte* gocci* drip* sprinkler* overhead_boom spraybom gietboom"),
        (Idea.Water, "water* wasser* vand* eau agua acqua"),
        (Idea.Amount, "litre* liter* litro* litri liters volume* giftgrootte gift menge *menge maengde* *maengde quantite* cantidad quantita amount*"),
        (Idea.Counter, "counter* teller* zahler* zaehler* *zahler taeller* *taeller compteur* contador* contatore* *teller pulse* puls impuls*"),
        (Idea.Fog, "fog* mist misting nevel* vernevel* nebel* hochdrucknebel* tageanlaeg* brumis* brouillard* nebuliz* nebulis* humidif* befeucht* luftbefeucht* bevochtig* befugt*"),
        (Idea.Fan, "fan fans ventilator* umluft* luftumwalz* ventilateur* brasseur* ventilador* ventilatore* ventilatori circulation_fan recirc*"),
        (Idea.Lamp, "lamp* assim* belichting* belicht* belysning* kunstlicht* kunstlys eclairage* lampad* lampara* hps supplement* vaekstlys*"),
        (Idea.Dosing, "dosing dosering* dosier* dosaggio dosificacion injection"),
        (Idea.Power, "power energy kwh kw gas gasverbruik consumption verbruik verbrauch forbrug consommation consumo energie* energi strom stroom elektric*"),
        (Idea.Dehumidify, "dehumid* entfeucht* ontvochtig* affugt* deshumid* deumid*"),
    ];
}
