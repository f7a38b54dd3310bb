"""Ordinary Spanish words within a letter or two of ours, so never repaired into them.

Chosen by frequency with the `wordfreq` package (22,000 most frequent words).
"""

WORDS = """
abandonada abandonado abandone abarcan abarcar absoluta absoluto acabados acciones aconsejar action
actitudes acumulando acusan adam adan adelantado adelantar adoptaron adversos advierte ahhh alberga
albergar aldea alegando aleja alejada alejadas alejado alejados aliado allen alterada alterado
amazon ambulante ambulantes ancla angelica anota anulado aplastar aplicando aptitudes arango
arquero arreglado arrepentido arrestados arrestaron arruinado artico asciende aseo asia asociado
asumo aterrador atienda atrajo atravesado autores aval avanzan avanzar avaricia ayudame ayudamos
ayudarle ayudarles ayudarte bailar bailarin bailarines bajista bambu barbosa basan base basicas
basico benedicto beta blas blog bloqueo bogota bombas bombilla bombo bondi bonilla borbon botanico
brava breve brito brujo bruno burla buscamos buscarle buscarme buscarte bustos cabos calculado
calendario calentar callao calvario calzada calzado cambiante camilla canales canalla caracter
carencias carter cascada casilla casillas causal causar caverna chao charlotte chatarra cheques
chingada chinos choque cierren cineasta cinturon citando claridad claus clubes colision colmo
columbia comarcas comedia comediante comedias comerme comerte comillas comodoro comparan comparar
compas compasion comporta compraba comprada comprado comprados compramos compran comprando comprar
comprarme comprarse compraste comunica comunicados comunican conchas condor confiaba confirmada
conocer conquisto considera consideraba consideraban considerada considerado considerar
consideraron consideras considere consideren considero consiguen consistencia construcciones
continuos contradicciones contraloria coquimbo coral cortina cortinas crearon criatura cruzando
cualquiera cuartel cuarteto cubra cubren culpa cumbre cupos curas curiosa curioso cursar cuya
dandole daran decano decencia decente deciamos decide deciden decides decididos decile decime
decirnos decirte dedicada dedicado defendido dejate delegada delegado delicada demanda demandan
demandar demandas demolicion dependiendo derrame desarme descargo deseando desempeno desgraciado
despejar despensa desplazados desplegar destacada destaco destina destinar detecta dialecto dijera
directivo director directora discurso discursos disolver disparan disparando disparar dispararon
dispares dispuesta dispuestas distinguen distinguir distintivo donado donna dorada dorado dotado
dramatica dramaticas dramatico dramaticos duplicar electrica electrico electronicas electronicos
elemental elemento elementos elige eligiendo embajador embarque emboscada empate empeno emperador
empezaba empezaron empleando empujon encaje encantaba encantada encargada encargadas encargado
encargados encendio encierra encierro encontrada encontrado encontraran encontrarlos encontremos
ende enfocada enfocado enfrenta enfrentan enfrentar enfrento enojo entendida entendidos enteramos
enterarme enteraron enterarse enterrada enterrado enterrados enterrar entraban entrada entregada
entregaron epica equilibrada equilibrado escandaloso escoger escribe escribes escuadron esperado
esperarse estadio estafa estaran estariamos estarian esteban esteticas estetico esther estructural
estuvieran estuvieron eterna eterno etnica excusa exigen existia existian existido existieron
existio expandir expansion explicarme explorador explorando explote expulsado exterior extranjeros
facilitado facilitan facilitar fallido fama fantasia fantasias festejos fidel figuran figurar fijan
filmacion firmar flotando fosa frase frases frenar fruta fumar funcion funcionaba funcionado
funcional funcionar funcionara funcione funcionen funciones fundada fundadas fundado fundador fundo
gamma garra gastando golazo golpearon gorila grabado guarderia guardian guayana haberle habernos
hablado hablamos habra habras habrian hacerle hacerles hallado hallazgos helicoptero helicopteros
hembras hicieran histeria historial historica historicas historico historieta homero hormonas
hubieran hubieron hulk hundir impida impiden imputacion imputado incomodidad incompetente
incorporada incorporado incorporan incorporar inevitable inflacion informado informal informan
informar informe informes insensible insistio insulina intestinal invadido irresponsable jane japan
jedi jodido judio juntamos ladera ladron laico lamentamos lamentar lanzado lares largas latin
latina laura lavado leer leia lentitud liderada liderado liderando literal llanos llegado llegan
llegara lleguen llenaron llevadas llevado llevados logos loja lola loma luchado lucia lucio lula
lupa lyon mahoma main maiz malditas maletas mamada mandado mandamos mandatos mania manija manila
manipulado manta mantas marcho marzo mascara matarlos mendez merecido merienda messi metemos metodo
mezclan mezclar migrantes millon miramos mistica mmmm modas monje morris mosquito mosquitos muela
muelle musica musico nacho natura nube ocasional ocean oceano oceanos ocupe ocurria ocurrida
ocurrido ocurriera ocurrio ocurrira ocurriria ofrece ofrecian orbita ordenacion ordenadas ordinaria
ordinario orgullosa orgulloso orientadas oriental orquesta oscuridad pagarlo pagos palestina
palmeras paneles papeleo papeletas pasarla pasarlo patrulla pavimento pegan persas pianista
piensalo piensen pierden pierdo pintan pintor pitt planteada planteado pongase portador portando
portavoz postres postula postular preciado premiado prenda preocuparte presenten presidentes
presionado prestada pretende pretenden pretender pretendes pretendia pretendo prever principal
profetas prolongada prolongado promedio promedios prometi prometida prometido prometo pudieramos
quemar quesada quitarme quitarte racionales racistas ranas rastrear razas razon razones recaudar
reclaman reclamar recogio recomendado recomiendan recordamos recortar recorte recortes reformado
regala regio relacion remo rendir replicas reportado reportaje reportan reportaron reportera
reportero requeria requerida requerira requiera requiere requieren respecta respecto respetan
respetar respete respeten retenido reunidos reunieron reunio reverso revistas revolucion revuelo
ridiculos rindo roban rocha rocio roman rompiendo rotura rubio rubro rueda ruega ruego rumor
sabores sabras sacrificado sahara saltillo salvaron salvarse saqueos semilla senala senalo
sencillas sensacion sentar senti sentia sentiras sentiria sentis servira serviran serviria siglas
silver simples sintoma sobran sobrevivido sobrevivir socrates soleado sonda stella sucede suceden
sucedera sucedido sucesion sudan suecia sufrieron suicidio suman sumando sumas suya tacones tactico
tardaron tasas tendremos tenerife tenerle tenerlos tenerte tengamos teniamos terminacion
territorial tickets timida timido tomaban tomaste tomemos torta traera tragedia tragedias trailer
trajeron tramite tranquilidad trataron trates trompeta troya trump tuberias tumores turba turca
turco tuvieran ubico unidad united urgencia valido valor variado variados veas vegas veiamos velas
velo vencidos vendemos vendido vendidos vendieron vengo veras veraz verbo verso vicky viii violaron
violo virgo visa visado vita viuda vivan vivia vivido vivieron vivimos vivira volvera volvere
volverme vota votado voto wanda yace yankee york yuca zoom
relaciones lider naciones fisico carnaval amado estetica molina jardines gratuito sonar pasillo
chaqueta gratuitos sordo pasillos hablaremos carranza preguntona demonio demonios
abdominales abra abran abraza abres abria abrigo abril abrira abro abstencion abuelas abuelos
acaban acabar acabas acabe acelerador acento aceptada aceptado aceptan aceptarlo aceptaron
aceptas acepte acera acercan acercar acero acido acierto aciertos aclarado acomodar acoso
acostarme acta actas activar activas activos acto actos actuan actuar actue actuo acuatico acude
acuso administra administrador administradores administrar adoptada adoptado adora adulta
adultas adulto adultos aerea afirmado afueras agarran agarre agosto agrada agradecio agrado
agresivos aguantando aguantar aguante aguas aguda agudo aguero aguila agujas agujeros ahogado
ahorra ahorrando ahorros ajenas ajusta ajuste alarmas alcances alcanzaba alcanzado alcanzados
alcanzan alcanzando alcanzar alcanzo aldo alegra alegres alegria alegrias alegro alentar alertas
aleta alfa alfombras alguna alguno aliada alianza alianzas alicante alienta alimenta alimentado
alimentan alimentar alimentos alla almacenar almorzar alrededores altas altos alvarado alzo
amaba amada amarga amarte amas amigas amigos amlo andando andes anemia angulos anibal anima
animados animan animar anotado anoto ansiosos anteriores anticonceptivos apaga aparecia
aparecian aparecio aparta apartado apatia apellidos apertura aplicados apodado apodo apolo
aportado aportando aporte apostando apoyaban apoyada apoyados apoyamos apoyan apoyaron apoye
apoyos apreciado aprecian apreciar aprecio aprobado apta apto apuesta apuesto apuntado apuntan
apuntar apunte apunto aras arca arce arcilla ares argel argumenta argumentando argumento arma
armada armadas aros arrancan arrancar arrastrado arrastrar arrastre arrestado arribo arriendo
arrojado arrojar arroyo arte arteria arterias artes articulaciones asco aseguraba asegurada
asegurado aseguran asegurar asegurate asegure aseguro asentado asiatica asiatico asiste asma
aspiran asquerosa asta asuma asustada asustado asustados asustar atacan atacar atada atado
atenas atentado atentados atento atico atrae atraso atroz audiencia audios augusto aula
aumentada aumentan aumentar aumentara aumentaron aumente aumentos autor autos auxiliar auxilios
avanzado aver avisa avise ayudan ayudar ayudas ayude ayudo azar baile bajada bajan bajas baje
bajen bajos bala balas balcones balon balsa banca bancada bancos banda bandas bando bandos
banquero banquete barba barbacoa barbarie barbaros barco bardo bares barras barrera barril barro
basa basada basado basandose baso bastantes bata batallas batallon bate bateria baul beba beben
bebes bebida bebo beca bello bellos bendita benito berta besa besar beso beto birra blandos
blanqueo bloquea bloqueando bobo bocas boda bolas boleta bolsas bolso boluda boludos bonitos
bonos borda borde borges borra bota botellas botes botin brinda brindando brindar brindo bromas
bromeando bronca brote bruta bucle buda buenisima buey buitre buitres bula busco busqueda busto
caba caballero caballito caballos cabe cabello cabellos caben cabezas cabida cabina cabo cabra
cabrera cabron cacao cachorros cadena caderas caera caes cagan cagas cague caia caidas caidos
caiga cajas cajita cajon cala calado calcuta caldera calderon caleta calida calido calienta
califica calla callar callas callo calma calmar calvo camarera camas cambiamos cambian cambiando
cambiar cambiarlo cambiaron cambias cambie cambiemos cambien cambies camila camilo caminan
caminos camion camionetas camisa campanas campeona cana canas cancela cancelado cancelo canchas
candado cano canos cansa cansados canse canso canta cantado cantando cante canto cantos caos
capa capas capo capriles caracoles caras carbono carcel cardenas cardiaca cardiaco carece
carecia cargada cargadas cargador cargados cargan cargas cargos carino carita carnes carnet caro
caros carpa carpeta carreras carretera carriles carros carta cartera carteras carton casada
casado casan casar casaron casas casco casera casita casos casta castilla cata cauca cauce
caucho causa causada causadas causado causados causando causo cava cavidad cayera caza cazar
ceballos cebollas ceder cedido ceja celos celu cenas censo centrada centrado cepa cera cerco
cerda cerdo cerradas cerrados cerradura cerramos cerraron cerre cerro certamen cesado cese cesta
chaco chapa chapo chasis chaves chavo checa checo chicas chicha chicos chino chiquitos chisme
chispas chistes chivo choca choto chulo chupar cielo cientos cierro cierta ciertos ciervo cima
cine cines cinico circo circuito circuitos ciro cirugias cirujanos cita claros clase clausula
clausulas clave claves clero clic clientes clima climas clinicas clinico clinicos cobre cocaina
coches cocido cocinar cocinas codos coge cogen coger cogido cogiendo cogio coincidencia cojer
colaborado colas colchones colera colgado colgados colgar colima colina colocada colocadas
colocado colocados colocando colores colorido coman comando comas combinado combinar comemos
comento comenzado comenzar cometiendo comica comicios comico comidas comienzan comienzo
comienzos comieron comodos compa companeras companero companeros compania compendio compleja
complejas complejo complejos completado completar completas completos comprendo comprueba
compuesta compuestas compuesto comuna cona concejo concentra conciencias concierne conclusiones
conde condes conejos congelado conocera conocernos conocimientos consciencia consejo
considerables consigo consistentes constitucional consultado consultas consulte consultor
consultora consumen consumido contaban contacta contactar contacto contactos contada contadas
contados contagio contando contaron contarte conte contenga contengan contenia contenian
contenida contenido contentos contesta contestado contestan conteste contexto contextos
contienda contiene contigo conto controla controlada controladas controlador controlados
controlan controlando controlar conveniente convento convivencia copa copas copia coran
corazones corea coro coros corra correccion correcta correctas correctos corredor corregido
corren correo corres corria corrida corridas corro cortadas cortado cortados cortan cortando
cortar cortaron cortas cortazar corten cortes corto coser cosita cositas coso cosquillas costado
costar costara costaria costas coste costera costeras costilla cota coto crea creamos crean
crear creas crecen crecer creces creci crecia crecido creditos credo creemos crees creian creias
cresta creyendo creyeron creyo cria crias cris cruce cruda crudo cuadrada cuadrado cuadrados
cuadro cuadros cuan cuantia cuarentena cuarta cuartos cuarzo cubierta cubiertas cubiertos cubo
cuela cuelgan cuenca cuentan cuentas cuente cuento cuentos cuerno cuero cuerpos cuervo cuestan
cueste cueva cuida cuidad cuidados cuidadosa cuidadoso cuido culos culpo culto cumbia cumplida
cumplidos cumpliendo cumplio cuna cuota cupo cura curado curro curvas cuyo daba dais dama damas
danado dandoles dano danos dara daras daria dario darles darlo darse darte dato datos deba deban
debe deben deber debera deberian deberias debi debia debiamos debiendo debilidades debilitado
debio debito decada decentes decia decida decidida decidido decido decis dedicar dedico defecto
defiende dejaban dejad dejalo dejando dejaran dejare dejaria dejarla dejas dejemos dejes dela
delito delitos demasiadas demasiados demora denle depender derechas derecho derechos
desaparecida desaparecidas desaparecidos desaparicion descarada descarga descargar descargas
descartado descartar descenso descuido deseamos desee desesperados desierto desiertos desmadre
despegar despegue despejado despertado desperte despiertan despierte despierten desplazado
desplegado destinada destrozar destruido destruye destruyen detectado detectar detenerse
detienen deuda devolverle devoto devuelva devuelvan devuelven diaria diarios dices dicha dichos
dicto dieran diferencial diferencian diferenciar diferencias dificulta dificultades diga diganme
digas digno dije dijeran dile dina diosa dioses dira diras direcciones directivos dirian dirias
dirija disculpa disculpas disfruta disfrutado disfrutan disfrutar disfrute disfruten disfrutes
disminuye disminuyen disponer disposicion disposiciones dista distinguido doblar docentes
doctorado doctores dolar dolares dolorosa doloroso dominado domingos dominio dominios dona dones
dono doradas dorados dormia dote dotes dron dudar dudas dudo duela duelo duena duermen duermes
duermo duero duramente duran durar duras dure duros echan echar echarle echas eche edad editar
ejes embarazo emergencias emocionados empanada empanadas empeorar empezado empezara empiezan
empiezas empiezo encontrar encontro encuentran encuentras encuentre encuentren encuentres
encuentros energetica energeticas energetico energeticos energias enero enfermas enfermedad
enfermeras enfermeria enfermos enormes entendes entendido entendiendo entendio enteran enterar
enteras entere enteros entiendo entierro entran entranas entrando entrar entras entre entro
envia envian enviara envio equipos equivocada equivocadas equivocados eras eres escala escalada
escano escapado escapan escapar escasa escaso escoge esconden esconder escondidas escondidos
escriba escribano escribas escriben escribi escribia escribio escribirlo escucha escuchan
escuchar escuchas escuchen escuches escucho esfera esfuerzos espacial espada espaldas especiales
especias espejo esperabamos esperan esperar esperas espere espesor esposas esposos esquinas
esquivar establece estables estara estare estas esten estero estima estimado estimados estirar
estupida estupido estupidos evalua evaluacion evaluaciones evaluar evidencia evidente evidentes
evita evitado evitan exagerando excelentes excesiva exceso excesos exclusivo existen existente
existentes expande expuestas expuestos extender extendida extendido extensas extensos externas
externos extiende extienden extracto extrae extraido extranar extranas extranos extrema extremas
extremidades extremo extremos facil factura facu falda falla fallan fallando fallas fallo fallos
falsas faltaban faltado faltar faltaron faltas falte fantastica fantasticos farc faro faros
farsa faso favorece favores favorita favoritas favorito favoritos feas feria ferias ferro feto
fiar ficcion fiera fija fijo filme fina finas fingir fino firma firmada firmes firmo flaca
flanco flota fluido fluidos flujo flujos fomenta fomentar forma formaba formaban formadas
formado formados formales formalmente formando forme formen formo foro forzadas forzados foto
fotos fraccion fracturas fragmento fragmentos frente fresa frescas fresco frida fritas frito
fuentes fueran fueras fuere fuero fueros furia futuras gafas gales gallinas gallos gama gana
ganan ganando ganar ganarse gancho gane ganso gasolina gasta gastan gasto gastos gatitos gentes
gesta gesto gigantes gira giran girando giras giro giros globales globos goce goles golfo golpea
golpeando golpes goma gordas gordito gordos gorra gorro gotica goya goza graba grabo gracia
graciosa graciosas gracioso graduo graficas gral gramos grandes grandeza grandiosa grano granos
grasas grata gremios grieta grifo gripe gritan grua gruesas grueso grupo guantes guapa guapas
guarda guardas guarde guarden guardo guay guita gustar gustara gustas guste gusten gustos haber
habiendo habla hablaba hablaban hablame hablan hablara hablare hablarle hablarte hablas hable
hablemos hables habre habremos hacen hacerlos hacernos haces hacha haciamos hacienda haciendas
haciendole haciendolo haciendose hada haga hala hallados hallan hallar hallaron hallo
hambrientos haras haremos haria hartos haya hechas heladas herido heridos hermanas hermandad
hermanos hernando hiere hijas hijos hinchas hito hitos hoja hojas hombre honesta honesto hongo
honra horribles hoyos hueca huecos huelen huelgas huella huelva huerfano hueva huevos huir
humanas humedad humedos humo huye huyo iban identica identicas ignorado iguala impensable
implacable implantar importaba importado importar importe importo imposibles imss incas
incursion infecciones infectados influido infraccion ingles inglesas ingleses ingresos iniciada
iniciado inmenso inocentes inquietud insecto insectos inspeccion instinto insto intensa intensas
intensivo intensos intentaba intentado intentan intentar intentara intentare intentas intente
intenten intentes intentos interesa interesan interesar interese intereses intereso internas
internos inusual inventa inventan inventando inventar invento inventos invertido inyeccion
irregulares irse jabon jajaj jajajaj japon jara jefa jefes jeje joda jode joyas jueces juegan
juegas juegos jueza jugaba jugada jugador jugara jugos juguetes juntan juntando juntar juntaron
junto jurada jurado jurar juro justa justas justos juzga juzgado juzgando juzgar kilo kilometro
labores lados lago lagunas lamina laminas lamparas lanza lapso larga largo lastimar lastre latam
latas lazo leal leales leas lejanas lenguas lenta lente lentos lesa levantaba levantan
levantando levantarme levantaron levantarte levantas levantate levante levanten leyendas leyo
libera libero libra libres libro libros lidera liebre lienzo ligar ligas ligeras ligeros lila
limita limite limites limito limpiar limpias limpieza lina linea lineas lino liquidar liquidez
lira liso listos literalmente litio litro llamaba llamaban llamadas llamado llamados llamamos
llamando llamara llamaria llamarla llamarle llamarlo llamarse llamas llames llano llave llaves
llega llegados llegaremos lleguemos llenan llenar llenas llene llenos llevamos llevan llevando
llevar llevas lleve lloran llores llosa lobo loca locos lodo logia logran lograr logras logre
logro lomo lona lope lora lote lotes lucen luces lucha luchan luchar lugo lujos lunas luto
machado madero maestra maestras maestria magno mago malas maldita maldito malestar maleta malla
malos mamar mamas mamen mami mamita manada mananas manda mandan mandaron mandas mando mandos
manejado manos mantenerme mantenerte mantenia mantienen manto manzanas mapa mapuches maravillas
maravillosa marca marcada marcadas marcado marcador marcados marcan marcando marcas marcha
marchado marchando marchar marcharse marchas marcial marea mares marge maridos marques marquesa
marquez marte masa masacres mascotas massa maten materias materna mato mauro maza mazo meca
mecha medica medicacion medicas medicinales mediciones medico medida medidas medido medios medir
meditar mejia mejorada mejoran mejorar mejoras mejore mejoria melodia melodias membrana mena
mencion menciona mencione menciono menem mensajero mensuales menta mentido mentir mentiras
mentirosa mera mercados mero meros mesas mesias metan metas mete meten meterse metes meti metia
metio meto mexicali meza mias mide miedos miel miembros mientas mientes mierda mijo minas
minimas minimos mios mirad mirada miradas mirado miran mirando mirar miras mire mires misa misas
miserables mismas mismos mistico mito mitre mocion moda moderador moderados modernos modesta
modesto modo modos mola molestaba molestado molestan molestas moleste molestos molino momento
momentos monde monedas monitores monja monos monta montando montes monto montos montt mora morbo
moria moro moros morro mosca mostrado mota motin motos moverme moverte movia movida moviendose
movil moya mozo muchachas muchacho muchachos muchisimas muchisimos muchos mudo muera mueren
mueres muertas muerte muertes muertos muestran muestras muestre muestren muestro mueva mugre
mula multiples muneca munecos murio muros musa musculos museo musicales muslos nace naciente
nadar naranjas naranjo nata nave navegando navidades navio necesita necesitado necesitan
necesitar necesitas necesite necesiten necesites negar negativa negativas negativos negros nena
nene nenes nervio nerviosa nervioso nerviosos neta neto nevera nexo nido nidos niego nietos
nieve nilo ninas ninez niza nono nooo normalidad normas norte nosotras notan notar notas novena
novias novios nuca nudo nuestras nuestros nueva nuevos nula numeros nunez objetos obrador obras
obvia occidente ochoa ocio ocupaba ocupaban ocupadas ocupados ocupando ocuparon odian odiar
odias odie odio oigo oleo oliva olivo olla olvida olvidada olvidados olvidando olvidemos olviden
olvides operaciones operador operadora operan operando operativos opina opinar opinas opino opio
opto ordenado ordenando orientado originado orilla orto oscuras oscuros osos otero oveja ovejas
oyen oyes pacientes paco pacto padece padecer paga pagada pagado pagamos pagando pagar pagara
pagaron pagas pagina pago pags pais paises paja pajaros pala palas palencia paliza palma palomas
palos pampa pana panes panico pantallas papas papi paquetes paraba parada parados paramo paran
parana paranoico pararon paras parches parciales pardo parecen parecera pareceria pareces
parecian parecida parecidas parecido parecieron parecio parejas pares pariente parientes pario
paros parques parra parte parten partes partidas partidos partiendo partimos partir parto pasaba
pasadas pasados pasajes pasamos pasan pasando pasar pasara pasaran pasarse pasemos pases pasito
pasos pastas pastos patada patata patatas patear patios pato patos patrias patriotas pausa pauta
pautas pavo pecado peces pechos pedi pedia pedido pedimos pedira pega pegada pegado pegados
pegando pegar pegas pekin pelado peleamos pelean pelear peleas peli peligros peligrosa
peligrosas peligrosos pelis pelos pelotas peluca penales pene pensabamos pensaban pensabas
pensada pensado pensando pensar pensara pensaria pensaron pensas pensemos penso peon pepa peque
pequenas pequenos pera perdamos perdedor perdemos perdi perdia perdida perdidas perdidos
perdiera perdimos perdona perdonar perdone perdono perfectas perfectos periodo perito perla
permisos permita permitan permitia permitio permito peron perras persa perseguido persiguen
personaje personajes personales pesa pesaba pesadas pesados pesan pesas pescado pescar pese
pesquera pesquero petro petrolera petrolero petroleros piba pibe pibes pica picado picar pico
picos pida piden pides pidiendole pidiera pido pieles piensa piense pierda pierdas pija pilar
pilas pillo pina pinar pinas pinche pinches pinguino pino pinochet pinos pinta pintada pintadas
pintando pintas pinto piola pipa pisco pisos pista pito placas placer plaga planas planea
planeado planeando planear planeta planetas plano planos plantado plantas plantea plantean
planteando plantear plantilla plastica plasticas plasticos plata plateado platino platon platos
playa playas plazo pleito plena pluma poblada poblado pocas pocos podamos poder poderosa
poderoso podia podiamos podian podio podran podras podre podremos podrias poeta polaca polis
polla pollos polos polvo ponce pondra pondremos pondria ponemos ponen ponerle ponerme ponerte
pones ponga pongamos pongas poniendose ponle ponte popa porciones poros porro porta portada
posada posadas posesion posgrado posibles posicion posta poste postea postgrado postura pozo
pozos practica practican practicar practicas practico practicos prado prat precio precios
preciosa precioso precisos predio prefecto preguntaba preguntado preguntale preguntamos
preguntan preguntar preguntarle preguntarme preguntarse preguntarte preguntas pregunte pregunten
preguntes premisas prendido preocupaba preocupan preocupar presa presenta presente presento
presiona presionar presiones preso presta preste presto presunta presunto presuntos prevenir
previene previo prevision prieto primaria primarios primas primavera primeras primero primos
principado principios prisas prision proa probables probada probando probarlo procesion producen
productiva productivas productivo productivos productos profundas profundos progresar progreso
progresos pronta propuse prosa protesta protestan protestas proyectiles proyectos prueban
pruebas pruebe pudiendo pudieran pudieras pudieron pueda puedan puedas puertas puestas puestos
pujol pulido pumas punos pura puros pusiera pusieran puta putas puto putos quedado quedan
quedando quedar quedara quedaran quedaria quedarian quedarnos quedarse quedas queden quejan
quejar quejarme quema quemado quemados quemando quemaron quemo queramos queriamos querian
querias querida queridos querra querria quesos quiebra quiebre quieran quieras quieren quieres
quieta quieto quinta quintana quintero quinto quisieran quisieras quisieron quitas quiten racion
rafa raices raiz rajoy ramo rampa rana rancho rango rapero rapidas rapidos raras raros rasgo
rata ratas ratito raton raya rayo rayos raza reaccionan reaccionar reacciones reacciono
recepcion receta rechazada rechazado rechazan rechazar reciba reciben recibes recibi recibo
reciente reclamado recogen recoger recogidas recogido recogidos recordarle recorridos
recorriendo rectas recuento recuerda recuerdan recuerdas recuerde recuerden recuerdos recuperado
recurre recurrente recurrentes redaccion redes reduccion reducen reducida reducidas reducidos
reflejada reflejado refresco regente regresa regresamos regresan regresando regresar regresaron
regrese regresen regula regulada regulado regulador regulan regulares reia reir rejas remover
rencor renta repaso repentino repetida repetidas repetidos repetir repetirlo repita repite
reporta reporte reporto reposicion requerido resalto resolver resolvera respalda respaldado
respaldar respaldo respetado responda respondan respondera respondes respondi respondia
respondido respondio resta restantes restos resuelta resuelto resueltos resuelva resulta
resultado resultan resultante resultar resulte resulten retirada retirado retiran retirarse
retiro reto retorica retornar retos reventar reza rezar rezo ricos rima rinde rinden rinon rioja
rios risas rito ritos roba robada robadas robado robados robar robarle robos roca rocas roce
rodar rodeados rodillas rogar rolando rollo rompa rompen romper ronda ropa ropas rosca rotas
rotos rudo ruidos rusa rusas ruso ruta sabados saben sabes sabiamos sabian sabias sabido
sabiendo sabina sabio sable sabor sabra sabremos sabria sacada sacado sacados sacan sacar
sacarlos sacas sacos sagrado salada salado salas salchichas saldo salga salgado salgamos salgo
salian salidas saliente salieran salis salmo salomon saltan saltos salud saluda salva salvado
salvando salvar salve sanar sanas sano sant sanz sapo saquen saqueo saques secar secas secesion
secta seda sede sedes segui seguian seguid seguida seguido seguidor seguidores seguimos seguir
seguira seguis segundas segundo seguras seguridad seguros semanal semanales sena senado senda
seno senor senoras senoria senos sensibles sentado sentados sente sentidos sentimos sentira
sento sepa separa separacion separadas separar separaron sequia seran seras sere seres serian
serias serio serna serra servia servicios servidor severas severos sexo sexos sexuales sida
sienta sienten sientes siga sigan sigas siglo signos sigues siguiera sillas similares sintio
siria sirio sirva sirven sirvo sistemas sitios soberana soberano sobra sobres sobrinos sobrio
socia soga sois soja solas solian solidas solido solidos solis solista soltar soltera solteras
sonado sone sonora sopla soportan soportar soporte soportes soporto soria sorteo sosa soto sres
suaves suba suben subes subi subia subida subo sucio sucre sueca sueco suecos sueldo sueldos
suele suelos suenan suene suenos suficientes sufre sufriendo sufro sumar suministrar suministro
suministros supe supera superacion superando supere superficiales supero supuesta supuestas
supuestos surgen surgiendo surgieron suspende suspender suspendio suspenso sustenta tablas tabu
tacto tala talla talon tamanos tamayo tampico tanda tania tantas tantos tapa tapas tarado tardan
tardar tardia tardo tarea tarragona tarta techos tecla tejado tejidos telas tele tema temas teme
temer temido temperaturas templo temprana tempranas tendido tendre teneis tener tenes tengas
tenian tenis tentativa tercer terceras tercero terceros tercio termica termico terminaba
terminada terminado terminan terminar terminara terminas terminen termines terminos ternera
terribles tesis teta texto textos tias tiempos tierna tierras tigre timo tinta tinte tinto tios
tipa tipo tipos tiraba tirados tiran tirano tirar tiras tiren tiron tiros toallas tocara tocas
tolerante tolerar tomaba tomados toman tomara tomaria tomarme tomarte tome tomes tomos tono
tonos tonta tonto tope topo torna torno toros torpe torre tortugas tortura torturas tostadas
tovar traba trabaja trabajado trabajan trabajar trabajas trabaje trabajen trabajos trad traen
traer traes traiga traigo traje trajo tramo tramos tranquilas tranquilos transito trapos
traslado tratado tratados tratan tratandose tratar tratarse tratas trate trato tratos traza
trazado trazar tren trigo tristes tronco tronos tropa tropas trozo truco tubo turno turnos tuya
tuyo uniformes urbe urgentes uribe usaban usada usados usan usara usaria usarlas usarlo usas
usen usos usted util vaca vacias vacios vaga vagos valen valer vales valia validas validez
validos valiente valientes valio valle vano vara varas varia varian variar vasos vasto vayas
veamos vecinal vecinas vecinos veian veis vela vena venas vendan vende vendes vendia vendida
vendidas vendo vendra venga venganza vengas venian venida venir venis venta ventaja ventajas
ventanas ventas verdes vere veria verle verme verte viaja viajo vias vicio vidal viejas viejos
viena vienen vienes viento viera vigila vigo vila vina vinos violacion violando violenta
violentas violento violentos visito viste vistos vitamina vitaminas vito vive vivi vivio vivos
voces volvamos volvemos volvia vosotros votando votaron vuela vuelo vuelva vuelvas vuelven
vuelves vuestra vuestras vuestro webs zombis zonas
aboga abogada abordo abreu acabaran aceptaba aceptara aceptaria acomodada acosta administradora
administran adoro aforo agota agotador alabanza alcanzada alcanzara aleje alice alimentando amar
ambar amigables analistas anita anitos anticipacion apliquen aporta apreciada arcangel arcas
arde armado armados armadura armas armo army arpa arranque arrestada arrojan aspirante asustan
ataquen atentar atomo atraco atropellado aumenten autora balones bana barbero barrer basica
basquet bazar beni benny besame bigote boba boletas bolo bomba bordados borro bosta boxeo
brindado buscados buzo calcular calidas calidos caminantes cancelada canoa caray carecer careta
carles carpas carreta carrio caseta catolicos caudales cebo celso celula celulas cerraba cerrara
certeza cerveza ceso chalecos champu charlando chinas chistoso cierre clases click cliente clon
coahuila cobraron cofre cogi coincido colacion combinando comicos comparativo compartian
compartida compartido compartidos compartimos compartir compartirlo comparto compra compren
comprenda comprensiva compro computo concienciar confiado confiere confirma confirman confirmar
confirme confirmo conforma conforme conocen conoceras conoci conocido consecuente conseguia
conseguido conseguir conseguira conservador conservadora conservadoras conservando consiente
consiguio contarlo contenedor contienen controle convencer conventos copio coronada corrector
cortijo costos creen creiamos crimea crimen crio cuestion culminar culta cupon darias daros
deberemos delia depositar deposito depositos derramar desafiar desagradable desagradables
descansan descartes desesperanza despachos desperdiciar desperdicio desperdicios desuso
desviacion desviar detendra dieta diles doug drew dudan elegante elegantes elevan emitida
emitido emociona emocional empato empezaran empezaria empuje encontrados encontraremos
encontrarnos escogida escogido escogio escondio escribiera escrito escritor escritos escucharlos
esforzado esfuerzan esperados estatica estrenada estrenado evito excedente excedentes exijo
exista explosiva explosivo explosivos faltaria fase fede fernet ferrea ferrer fiel filas filmes
filmo finde finge fluida fluir folk fomentan forjado formara francois francos fritos fuego fuga
fumo galo ganarme ganes garay gaucho gire gomas gomes grabada grabados gramo granadas grau grava
gravedad grite gustado haciendome hallada haro hazlo heroe hipolito horca horda hormona humos
hurto idem ignorada ignoran ignorar imagina imaginacion imaginan imaginar imaginas imagine
imaginen imagino importan importara incienso indicador indicando indice indicio indignacion
indignado indio ingesta ingrediente invirtio japones japonesa jerry jota jugaran kafka kara kirk
ladrillos lanchas lapida latinos league leganes libere lidero lios lirico llamarte llegadas
llueva lluvia lograremos losa madera mame manco maneja manjar manso manten mantendra mantenernos
maps maradona marc marcaron mari marico marinas mars mart marx mata mataria meade mediar
mensajeros mestizos metallica metidos midiendo mili mimo minera mitos modelado modestia
monitoreo mons montados montan montreal monzon mori moribundo mostrada mozos muestreo nava navas
nigel nodo nodos normalistas obligada obligado oculares ocultado ocupamos ocupara ofreciendo
oido oidos olivares olmo olvidarlo olvidarnos ongs operacional opta ordena ordenada ordene
ordeno organizar orientada pachuca pagadas pagarse pajas pajero palco pancho paralela parir
pastora patrio periodos persia pesame pierre pinza pita plantillas platillo podes portan
postulado predios preocuparnos presas prescripcion presi presos previos prince priori prisiones
prisma profesion provocada provocado provocan provocar pudor pulgadas pulpo punaladas putin
quedandose queres rada radicado rambla raso rastreo reconocen reconocia reconozca reconozco
recordarles recordarte recuerdes recurren recurrido recurrio refuerzo regalar regina regresion
relativa relativas relativo relativos relevante removido repartido reponer represion reprimido
resina resistio reuna reunimos reyna rezando rias rige rivera rivero robando rodado rodando
rodeando rogando romo rompo rostro ruina sabre sacro salmos salones salvados santidad satelite
saudi saudita sedimentos senalada sentaba sentirlo separando separe sesion setas significan
simple simular sito soler soplo soportado soya station subte suelen sugerido suma sumo supieron
talle talones tasa tejas telefonia telefonico tello telmo terminados termo tetas tiburones
tienden tilde tino tirador tonica torturar traian trama trampa traslada traslados trataba
trataban tratada tratadas trazo tula unicos unidas unido unimos vacante vaciar vago vals vasco
veda vente veros vete veto vice vido vinilo vistio volado yardas zarate
ello campo onda suyo acusar arder
chispoteo chispotear resistir enterado
acabado acercarnos acerquen aclarando acuerdan acuerde adivina adivinar agro alcantara
alcantarillado alcazar ames ampliado aparentar aprendas apuestas arrestar asunto atrapa atrapada
atrapado atrapados aves barrido betty bolsillo bolsillos borre bosque buque buscado buscan
buscar busquen cabanas cagaron capilla carceles cargadores cargamento carrillo cemento cepillo
circulos climatica climaticas climatico climaticos comete concha condon confian confiar confunde
confunden confundida confundido confundidos confundio confundir decian decoracion deleite
departamento descarado destacado destinado divisa elche elias eliminan elimine ellis encantado
encantan encantar etiquetado fifa fijada fijar filo gestor guardaba guardando guerrillas hacian
harian hermosura histerica lecho machete march merida metalico metalicos mostraba mostrara nacio
ofrezcan oral orar padilla pague paisanos pandilla paralelo parrilla planilla porno prepara
preparan preparar preparate preparo prestado prestamo recambio recibian recibida recibido
recibidos recibimos recibira recibiran recibiras recibiria recuperar recupere relato resolucion
resoluciones resolverlo resolverse resolviendo resolvio resplandor revisando revisen revuelta
revueltas sabana santisima satanas senores serlo servir sufri sufrido sufrir tapia temible
templado temple templos teoricos tienda tomaron trujillo unio vainilla vasca visita visitado
visitas visite
"""
