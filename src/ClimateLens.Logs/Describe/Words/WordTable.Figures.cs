namespace ClimateLens.Logs.Describe.Words;

/// <content>Words for figures, times, keys of long tables and records.</content>
internal static partial class WordTable
{
    private static (Idea Idea, string Words)[] Figures =>
    [
        (Idea.SetPoint, "set setpoint* set_point* setp sp setpt stp soll* *soll *sollwert* sollw instelling* ingesteld* ingest gewenst* berekend* berek ber streef* setpunt* saetpunkt* *saetpunkt* setpunkt* onsket krav *krav consigne* consigna* impostat* target desired demand* reference* riferimento heating_temperature"),
        (Idea.Measured, "measured meas actual act gemeten ist istwert* gemessen malt aktuel aktuelle mesure* medid* misurat* real"),
        (Idea.Average, "avg average mean gemiddeld* gem mittel* *mittel *mittelwert* durchschnitt* gns gennemsnit* snit middel moyen* moy media medio promedio"),
        (Idea.Minimum, "min minimum minimal* minima minimo mini laagste tiefst*"),
        (Idea.Maximum, "max maximum maximal* maxima maximo massim* maks* maxi hoogste hochst* peak"),
        (Idea.Deviation, "std stdev sd stabw standard_deviation stddev variance afwijking abweichung afvigelse ecart desviacion deviazione differenz difference diff verschil delta spredning afvig*"),
        (Idea.Felt, "apparent feels_like feelslike heat_index windchill wind_chill gevoelstemp* gefuhlt* foelt folt_temperatur ressenti* sensacion percepita"),
        (Idea.DayAverage, "etmaal* dogn* running rolling moving 24_h tagesmittel* tagestemp* dagtemp* giornalier* journalier* diari*"),
        (Idea.Sum, "sum som *som summe *summe *summen *sum cumul* total* totaal* dagtotaal gesamt* ialt acum* accum* somme suma somma daily dagelijks"),
        (Idea.Position, "position* pos stand *stand stellung* *stellung offnung* oeffnung* opening* abning* posicion* posizion* apertura* open"),
        (Idea.Alarm, "alarm* alert* storing* storung* stoerung* fejl fault* error* warn* status state flag quality qc code limit* grens* grenz* graense* soglia limite* trend*"),
        (Idea.Battery, "battery* batt* akku rssi signal voltage volt* snr firmware ptemp panel panel_temp cpu board chip"),
        (Idea.Number, "record rec id nr num no index sort row lfd volgnr lobenr sequence seq order"),
        (Idea.Place, "lat latitude lon long longitude lng altitude elevation height hohe hoogte"),
    ];

    private static (Idea Idea, string Words)[] Times =>
    [
        (Idea.Date, "date* datum* dato fecha data dates"),
        (Idea.Time, "time* tijd* zeit* uhrzeit tid tidspunkt tidsstempel klok klokken kl klokkeslaet heure* hora horas ora orario timestamp datetime *stempel tijdstip horodat* temps tempo zeitpunkt stamp"),
        (Idea.Start, "start* begin* von van from fra debut inicio desde inizio du"),
        (Idea.End, "end einde ende bis tot to til slut fin fine hasta until stop finish* ended finished"),
        (Idea.Utc, "utc gmt zulu"),
        (Idea.Local, "local* lokal* lokaal"),
        (Idea.Year, "year jaar jahr ar annee ano anno yr"),
        (Idea.Month, "month maand monat maned mois mes mese"),
        (Idea.Day, "day dag tag jour dia giorno"),
        (Idea.Hour, "hour uur stunde time_of_day hr_of_day hours hhmm hour_minute"),
        (Idea.Minute, "minute minuut"),
        (Idea.DayOfYear, "doy julian jday yday day_of_year dagnummer tagesnummer jour_de_l_annee julian_day"),
    ];

    private static (Idea Idea, string Words)[] Keys =>
    [
        (Idea.House, "house huis haus hus afd afdeling abt abteilung celle cell compartment comp compartiment* kasafdeling chapelle nave tunnel bay zone sector secteur settore block"),
        (Idea.Sensor, "sensor* *sensor fuhler* *fuhler fuehler* foler* *foler capteur* sonda sonde* sensore* logger* node device* station* probe* meetpunt* messstelle* messpunkt* malested* origin tag tagname point* channel* kanal* kanaal canal serial* site source location locatie ort sted lieu ubicacion posto"),
        (Idea.Variable, "variable* parameter* param quantity grootheid* messgrosse* grosse storrelse* grandeur* magnitud* grandezza* variabele* type name naam bezeichnung* beschreibung* description* omschrijving* measurement* item signal_name metric"),
        (Idea.Value, "value* waarde* wert *wert messwert* vaerdi* valeur* valor valore* reading* val result"),
        (Idea.Unit, "unit* eenheid einheit* enhed unite* unidad* unita"),
    ];

    private static (Idea Idea, string Words)[] Records =>
    [
        (Idea.Bench, "bench* tafel* tisch* bord borde tablette* mesa* bancal* bancone* bancale vak bed table goot"),
        (Idea.Pot, "pot potnr pots topf potte maceta vaso vasetto"),
        (Idea.Plant, "plant plants pflanze plante planta pianta"),
        (Idea.Level, "level score niveau stufe nivel livello klasse moisture_level feuchtestufe vochtniveau grade"),
        (Idea.Weight, "weight* gewicht* vaegt poids peso potgewicht topfgewicht"),
        (Idea.Operator, "operator by person grader door bediener mitarbeiter* initialer initials operateur operario operatore medewerker* who wie wer hvem qui"),
        (Idea.Note, "note notes remark* opmerking* bemerkung* notiz* bemaerkning* kommentar* remarque* commentaire* observacion* osservazion* comment* nota notas noter"),
        (Idea.Method, "method methode metode metodo wijze giesart bewasserungsart how system systeem"),
        (Idea.Minutes, "minutes minuten minutter minutos minuti duration duur dauer varighed duree duracion durata mins"),
        (Idea.Width, "width* diameter* breedte* breite* bredde* largeur* ancho* larghezza* spread plantbreedte"),
        (Idea.What, "what product* middel product_name produkt* produit* producto* prodotto* task action handling mittel pflanzenschutzmittel job"),
        (Idea.ActiveIngredient, "active_ingredient activeingredient a_i werkzame_stof wirkstoff* aktivstof* matiere_active substance_active ingrediente_activo materia_activa principio_attivo sostanza_attiva ingredient"),
        (Idea.Group, "group groep gruppe groupe grupo gruppo irac frac moa"),
        (Idea.Purpose, "purpose doel zweck formal objet objetivo scopo against tegen gegen contre contra contro target_pest reason"),
        (Idea.Rate, "rate dose dosis dosi aufwand* aufwandmenge concentration konzentration concentratie koncentration"),
        (Idea.Tank, "tank* behalter cuve deposito serbatoio bassin fertiliser_tank"),
        (Idea.Symptom, "symptom* symptoom symptome sintoma* pest pests disease* aantasting befall angreb schadling skadedyr ravageur plaga plagas parassita malattia ziekte plaag krankheit sygdom maladie enfermedad insect*"),
        (Idea.Count, "count counts aantal anzahl antal nombre numero conteo conteggio nb qty"),
        (Idea.Reentry, "reentry re_entry reentryuntil re_entry_until herbetreding wiederbetret* genbetraed* reentree reingreso rientro"),
        (Idea.LeafState, "leafstate leaf_state turgor wilting wilted"),
        (Idea.Treatment, "treatment* behandeling* behandlung* behandling* traitement* tratamiento* trattament* spray* drench* application* applied"),
        (Idea.Floor, "floor* vloer* fussboden gulv* sol_beton pavimento suelo_nave swept cleaned cleaning"),
    ];
}
