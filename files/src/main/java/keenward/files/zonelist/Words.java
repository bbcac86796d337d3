package keenward.files.zonelist;

import java.util.Optional;
import keenward.core.plan.DeviceKind;
import keenward.core.plan.LoopWiring;
import keenward.core.plan.ZoneResponse;

/**
 * The words of the trade in English, Spanish, German and French, long and short, without accents.
 * From memory, no source: common usage, none of it belonging to one maker.
 */
final class Words {

  /** Heads of columns. */
  static final Vocabulary<Column> COLUMNS =
      new Vocabulary<Column>()
          .add(
              Column.NUMBER,
              "no, nr, num, number, #, z, zn, zone, zone no, zone nr, zone number, zone #, zone num, input no, loop no",
              "n, no zona, n zona, zona, numero, numero de zona, num zona",
              "nummer, zonennummer, zonen nr, zone nr, lfd nr, linie, meldelinie",
              "n zone, numero de zone, num zone, no de zone, n de zone")
          .add(
              Column.NAME,
              "name, zone name, text, zone text, label, description, zone description, keypad text, text on keypad, display text",
              "nombre, nombre de zona, descripcion, texto, etiqueta",
              "bezeichnung, zonenname, zonentext, klartext, anzeigetext, beschreibung",
              "nom, nom de zone, libelle, designation, texte, intitule")
          .add(
              Column.PLACE,
              "where, place, location, room, position",
              "ubicacion, lugar, sala, estancia, donde, habitacion",
              "ort, raum, standort, montageort, einbauort",
              "lieu, emplacement, piece, local, endroit")
          .add(
              Column.DEVICE,
              "device, sensor, detector, what is fitted, fitted, equipment, detector type, device type, sensor type, unit",
              "dispositivo, detector, sensor, tipo de detector, tipo de sensor, equipo, aparato, elemento",
              "melder, meldertyp, melderart, gerat, geratetyp, detektor, fuhler",
              "detecteur, capteur, materiel, appareil, type de detecteur, peripherique")
          .add(
              Column.RESPONSE,
              "response, behaviour, behavior, acts as, zone type, type, function, reaction, attribute, action, alarm type, zone response",
              "comportamiento, funcion, tipo, tipo de zona, respuesta, reaccion, actua como",
              "verhalten, funktion, typ, zonentyp, reaktion, wirkung, linientyp",
              "comportement, fonction, type de zone, reponse")
          .add(
              Column.PARTITION,
              "partition, part, partitions, group, area, areas, set",
              "particion, particiones, grupo",
              "bereich, gruppe, sicherungsbereich, sb, teilbereich",
              "groupe, secteur, partie")
          .add(
              Column.WIRING,
              "wiring, loop, circuit, resistor, resistors, eol, connection, wired, line",
              "cableado, resistencia, conexion, bucle",
              "verdrahtung, widerstand, anschluss, leitung",
              "cablage, resistance, raccordement, boucle")
          .add(
              Column.SERIAL,
              "serial, serial no, serial number, s n, sn, id, transmitter, transmitter id, radio id",
              "numero de serie, n de serie, no de serie, num serie, serie, identificador",
              "seriennummer, serien nr, sender nr, funk id, kennung",
              "numero serie, identifiant")
          .add(
              Column.DELAY,
              "delay, entry delay, entry time, delay time",
              "retardo, tiempo de entrada, retardo de entrada, demora",
              "verzogerung, verzogerungszeit, eingangszeit, eintrittszeit",
              "temporisation, delai, tempo, delai d entree, temporisation d entree")
          .add(
              Column.EVENT,
              "event, event code, code, report code, centre code, center code",
              "evento, codigo, codigo de evento",
              "ereignis, ereigniscode, meldecode",
              "evenement, code evenement, code d evenement")
          .add(
              Column.NOTE,
              "notes, note, remarks, remark, comment, comments, date, cable, cable no",
              "notas, nota, observaciones, comentarios, fecha",
              "bemerkung, bemerkungen, anmerkung, hinweis, notiz, datum, kabel",
              "remarques, remarque, observations, commentaire");

  /** What a zone does. */
  static final Vocabulary<ZoneResponse> RESPONSES =
      new Vocabulary<ZoneResponse>()
          .add(
              ZoneResponse.ENTRY_EXIT,
              "entry-exit, entry exit, entry, ee, e e, e x, exit entry, delay, delayed, entry delay, entry delayed, entry slow, slow entry, final exit, entrance, dly",
              "entrada salida, entrada, retardada, retardado, retardo, temporizada, temporizado, demorada, entrada retardada, ruta de entrada salida",
              "eingang, eingang ausgang, ein ausgang, ein aus gang, verzogert, verzogerte, eintritt, eintritt austritt, ein ausgangsverzogert, eingangstur",
              "entree sortie, entree, temporisee, temporise, retardee, retarde, tempo, dernier issue, derniere issue")
          .add(
              ZoneResponse.FOLLOWER,
              "follower, follow, int foll, int follower, interior follower, foll, fol, entry follower, after entry, only after entry, handover, interior",
              "seguidora, seguidor, interior seguidora, interior seguidor, condicionada, condicionado, sigue a entrada, ruta de entrada",
              "folgezone, folgt, nachlaufend, mitlaufend, innen folgend, eingang folgend, zugangsweg, folge",
              "suiveuse, suiveur, interieur suiveur, interieure suiveuse, conditionnelle, conditionnel, passage, chemin d entree")
          .add(
              ZoneResponse.PERIMETER,
              "perimeter, perim, per, shell, perimeter instant",
              "perimetral, perimetro, perimetrica, exterior",
              "aussenhaut, aussenhautzone, huelle, hulle, perimeterzone, umfang",
              "perimetrique, perimetre, peripherique, peripherie")
          .add(
              ZoneResponse.INSTANT,
              "instant, instantaneous, immediate, at once, inst, imm, direct, burglary, burglar",
              "instantanea, instantaneo, inmediata, inmediato, directa, robo",
              "sofort, sofortalarm, unverzogert, direkt, einbruch, sofortzone",
              "instantanee, immediate, immediat, directe, intrusion")
          .add(
              ZoneResponse.TWENTY_FOUR_HOUR,
              "24-hour, 24 hour, 24 hours, 24h, 24 h, 24hr, 24 hr, 24 hrs, always, always on, 24 7, 24hr burg, day and night",
              "24 horas, siempre, permanente, siempre activa",
              "24 std, 24 stunden, 24std, immer, dauernd, standig, immer scharf",
              "24 heures, toujours, permanente 24 h, toujours active")
          .add(
              ZoneResponse.HOLD_UP,
              "hold-up, hold up, holdup, hu, pa, panic, personal attack, duress button, robbery, panic alarm",
              "atraco, panico, coaccion",
              "uberfall, ueberfall, uberfallalarm, notruf uberfall, bedrohung",
              "agression, panique, alerte agression")
          .add(
              ZoneResponse.FIRE,
              "fire, smoke alarm, fire alarm",
              "fuego, incendio, incendios",
              "feuer, brand, brandalarm, feueralarm",
              "incendie, feu")
          .add(
              ZoneResponse.CARBON_MONOXIDE,
              "carbon-monoxide, carbon monoxide, co, co alarm",
              "monoxido, monoxido de carbono",
              "kohlenmonoxid, co alarm",
              "monoxyde, monoxyde de carbone")
          .add(
              ZoneResponse.MEDICAL,
              "medical, med, medical help",
              "medica, medico, ayuda medica",
              "medizinisch, notruf, hilferuf",
              "medicale, urgence medicale, appel malade")
          .add(
              ZoneResponse.TAMPER,
              "tamper, tmp, tamper 24h, tamper 24 h",
              "sabotaje, tamper 24 horas",
              "sabotage, sabotagelinie",
              "autoprotection, sabotage 24 h, ap")
          .add(
              ZoneResponse.TECHNICAL,
              "technical, tech, aux, auxiliary, plant, supervisory",
              "tecnica, tecnico, auxiliar",
              "technik, technisch, storung, technikalarm",
              "technique, auxiliaire")
          .add(
              ZoneResponse.KEY_SWITCH,
              "key-switch, key switch, keyswitch, key, arming key",
              "llave, interruptor de llave",
              "schlusselschalter, blockschloss, schliessblock",
              "cle, commutateur a cle, contact a cle");

  /** What is fitted. */
  static final Vocabulary<DeviceKind> KINDS =
      new Vocabulary<DeviceKind>()
          .add(
              DeviceKind.CONTACT,
              "contact, door contact, window contact, magnetic contact, dc, d w, dw, mc, magnet, reed, reed contact, door, window, shutter contact, roller shutter contact, roller shutter, gate contact, surface contact, flush contact, win",
              "contacto, contacto magnetico, magnetico, puerta, ventana, persiana, contacto de puerta, contacto de ventana, iman, cm",
              "kontakt, magnetkontakt, mk, offnungsmelder, offnungskontakt, turkontakt, fensterkontakt, reedkontakt, tur, fenster, rolltorkontakt, rolltor",
              "contact magnetique, contact de porte, contact de fenetre, detecteur d ouverture, ouverture, porte, fenetre, contact d ouverture, volet, rideau metallique")
          .add(
              DeviceKind.MOTION,
              "motion, motion detector, pir, movement, ir, passive ir, passive infra red, passive infrared, movement detector, infra red",
              "movimiento, detector de movimiento, volumetrico, infrarrojo, infrarrojos, ir pasivo, detector volumetrico",
              "bewegung, bewegungsmelder, bwm, infrarotmelder, ir melder, pir melder, passiv infrarot",
              "mouvement, detecteur de mouvement, infrarouge, irp, infrarouge passif, volumetrique, detecteur volumetrique, radar infrarouge")
          .add(
              DeviceKind.DUAL_MOTION,
              "dual-motion, dual motion, dual, dual tech, dual technology, dt, pir mw, dual detector, twin",
              "doble tecnologia, dual tecnologia, detector doble, doble",
              "dualmelder, dual melder, bewegungsmelder dual, kombimelder",
              "double technologie, bivolumetrique, double, bi technologie, bitechnologie")
          .add(
              DeviceKind.CURTAIN,
              "curtain, curtain detector, curtain pir",
              "cortina, detector de cortina",
              "vorhang, vorhangmelder",
              "rideau, detecteur rideau, rideau infrarouge")
          .add(
              DeviceKind.BEAM,
              "beam, beams, ir beam, photo beam, active ir",
              "barrera, barrera de infrarrojos, barrera infrarroja",
              "lichtschranke, infrarotschranke",
              "barriere, barriere infrarouge")
          .add(
              DeviceKind.GLASS_BREAK,
              "glass-break, glass break, gb, glassbreak, glass, acoustic, acoustic glass break, g b, breakglass detector",
              "rotura de cristal, rotura de vidrio, rotura, cristal, roturas",
              "glasbruch, glasbruchmelder, gbm",
              "bris de vitre, bris de glace, bris de verre, bris")
          .add(
              DeviceKind.SHOCK,
              "shock, shock detector, vibration, seismic, inertia, shock sensor, vib",
              "sismico, vibracion, golpes, inercial, impacto",
              "erschutterung, erschutterungsmelder, korperschall, korperschallmelder, vibrationsmelder",
              "choc, sismique, vibration detecteur, detecteur de choc, chocs")
          .add(
              DeviceKind.SMOKE,
              "smoke, smoke detector, smk, smoke det, optical smoke, optical",
              "humo, detector de humo, detector de humos, humos, optico de humos",
              "rauch, rauchmelder, rm, rauchwarnmelder",
              "fumee, fumees, detecteur de fumee, daaf")
          .add(
              DeviceKind.HEAT,
              "heat, heat detector, rate of rise, ror, thermal, htd",
              "calor, termico, termovelocimetrico, detector termico, detector de calor",
              "warme, warmemelder, thermomelder, thermodifferentialmelder",
              "chaleur, thermique, thermovelocimetrique, detecteur de chaleur")
          .add(
              DeviceKind.CARBON_MONOXIDE_DETECTOR,
              "carbon-monoxide-detector, carbon monoxide detector, carbon monoxide, co, co detector, co alarm",
              "monoxido, monoxido de carbono, detector de monoxido, detector de co",
              "kohlenmonoxid, kohlenmonoxidmelder, co melder",
              "monoxyde, monoxyde de carbone, detecteur de monoxyde, detecteur co")
          .add(
              DeviceKind.CALL_POINT,
              "call-point, call point, mcp, manual call point, fire button",
              "pulsador de incendio, pulsador de alarma, pulsador incendio",
              "handmelder, feuermelder, handfeuermelder, druckknopfmelder",
              "declencheur manuel, bris de glace incendie")
          .add(
              DeviceKind.HOLD_UP_BUTTON,
              "hold-up-button, hold up button, panic button, pa button, pab, button, hold up, kick bar, panic switch, personal attack button",
              "pulsador, pulsador de panico, pulsador de atraco, boton de panico, pulsador atraco",
              "uberfalltaster, uberfallmelder, taster, notruftaster, uberfallknopf",
              "bouton, bouton panique, bouton d agression, bouton agression, pedale")
          .add(
              DeviceKind.MEDICAL_BUTTON,
              "medical-button, medical button, pendant, pull cord, medical pendant",
              "pulsador medico, colgante",
              "notrufsender, hilferuftaster, zugtaster",
              "bouton medical, medaillon, tirette")
          .add(
              DeviceKind.TEMPERATURE,
              "temperature, temp, temperature sensor, freezer, fridge, freezer sensor, thermostat",
              "temperatura, sonda de temperatura, congelador, sonda, frigorifico",
              "temperatur, temperaturfuhler, temperatursensor, kuhlung",
              "temperature sonde, sonde de temperature, sonde, congelateur, frigo")
          .add(
              DeviceKind.WATER,
              "water, flood, leak, water sensor, flood sensor, water leak",
              "agua, inundacion, sonda de agua, detector de inundacion, fuga de agua",
              "wasser, wassermelder, leckage, wassersensor",
              "eau, inondation, fuite, fuite d eau, detecteur d eau")
          .add(
              DeviceKind.LID,
              "lid, lid tamper, tamper, cover, box tamper, lid contact, enclosure tamper",
              "tapa, sabotaje, tamper de caja",
              "deckel, deckelkontakt, sabotagekontakt",
              "couvercle, autoprotection, contact de couvercle")
          .add(
              DeviceKind.KEY_SWITCH_CONTACT,
              "key-switch-contact, key switch contact, key switch, keyswitch",
              "llave, cerradura con llave",
              "schlusselschalter, blockschloss",
              "contact a cle, commutateur a cle, serrure");

  /** How a loop is wired; empty stands for radio. */
  static final Vocabulary<Optional<LoopWiring>> WIRINGS =
      new Vocabulary<Optional<LoopWiring>>()
          .add(
              Optional.of(LoopWiring.SINGLE_RESISTOR),
              "single resistor, single, seol, sel, eol, one resistor, 1 resistor, resistor, resistor at contact, resistor at detector, resistor at device, end of line",
              "una resistencia, resistencia simple, resistencia, rfl, final de linea",
              "ein widerstand, 1 widerstand, einfach, abschlusswiderstand, widerstand",
              "simple resistance, une resistance, resistance, fin de ligne, rfl simple")
          .add(
              Optional.of(LoopWiring.DOUBLE_RESISTOR),
              "double resistor, double, deol, del, two resistors, 2 resistors, double eol, dual eol",
              "doble resistencia, dos resistencias, doble",
              "zwei widerstande, 2 widerstande, doppelt, doppelwiderstand",
              "double resistance, deux resistances")
          .add(
              Optional.of(LoopWiring.TRIPLE_RESISTOR),
              "triple resistor, triple, teol, three resistors, 3 resistors",
              "triple resistencia, tres resistencias",
              "drei widerstande, 3 widerstande, dreifach",
              "triple resistance, trois resistances")
          .add(
              Optional.of(LoopWiring.NONE),
              "none, no resistor, nc, no eol, plain, closed loop",
              "sin resistencia, sin rfl",
              "ohne widerstand, ohne, ruhestrom",
              "sans resistance, sans rfl")
          .add(
              Optional.empty(),
              "radio, wireless, rf, wl",
              "inalambrico, via radio, inalambrica, sin hilos",
              "funk, drahtlos",
              "sans fil, radio sans fil, hertzien");

  /** A row that holds no zone on purpose. */
  static final Vocabulary<Boolean> SPARE =
      new Vocabulary<Boolean>()
          .add(
              true,
              "spare, not used, unused, free, empty, reserved, n a, not fitted, vacant",
              "libre, reserva, no usada, sin uso, vacia, reservada",
              "frei, reserve, unbenutzt, nicht belegt, leer, unbelegt",
              "libre, reserve, non utilisee, inutilisee, vide, non utilise");

  /** Labels in front of the site's name, above the list. */
  static final Vocabulary<Boolean> SITE =
      new Vocabulary<Boolean>()
          .add(
              true,
              "site, customer, client, premises, job, property, site name, customer name",
              "cliente, obra, instalacion, local",
              "kunde, objekt, anlage, projekt, bauvorhaben",
              "chantier, nom du client, nom du site, affaire");

  /** All partitions at once. */
  static final Vocabulary<Boolean> ALL =
      new Vocabulary<Boolean>()
          .add(
              true,
              "all, every, whole",
              "todas, todos, todo",
              "alle, gesamt",
              "tous, toutes, tout");

  private Words() {}
}
