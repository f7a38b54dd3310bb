"""Ordinary Spanish words within a letter or two of ours, so never repaired into them.

Chosen by frequency with the `wordfreq` package (22,000 most frequent words).
"""

WORDS = """
abdominales abogados abra abran abrazo abrazos abres abria abrigo abril abrir abro abuelas
abuelos aburridos acaban acabando acabar acabas acabe acelerador acento aceptada aceptado
aceptan aceptarlo aceptaron aceptas acepte acera acercado acercan acercando acercar acero
acertada acertado acierto aciertos aclarado aclaro acomodar acompana acoso acostarme acta actas
activar activas activos acto actos actue acuatico acude acudio acuso adiccion administra
administrador administradores administrar adonde adoptada adoptado adora adulta adultas adulto
adultos aerea afirmado afueras agarran agarre agente agosto agrada agradecio agrado agresion
agresivos aguantando aguantar aguante aguas aguda agudo aguero aguila agujas agujeros ahogado
ahorra ahorrando ahorro ahorros ajenas ajusta ajuste alarmas alcances alcanzaba alcanzado
alcanzados alcanzan alcanzando alcanzar alcanzo aldo alegra alegres alegria alegrias alegro
alemanas alentar alertas aleta alfa alfombras alguna alguno aliada alianza alianzas alicante
alienta alimenta alimentado alimentan alimentar alimentos alla allegados almacenar almorzar
alrededores altas altos alvarado alzo amaba amada amarga amarte amas amigas amigos anchas
andando andes anemia angulos anibal anima animados animan animar anotado anoto ansiosos
anticonceptivos apaga aparece aparecen aparecer aparecera aparecia aparecian apareciera aparecio
aparta apartado apartados apatia apellidos apertura aplastar aplicados apodado apoderado apodo
apolo aportado aportando aporte apostando apoyaban apoyada apoyados apoyamos apoyan apoyaron
apoye apoyos apreciado aprecian apreciar aprecio aprobada aprobado aprobados aprobar aprobo
aprueba apta apto apuesta apuesto apuntaba apuntado apuntan apuntar apunte apunto aragon aras
arca arcilla arellano ares argel argumenta argumentando argumento arma armada armadas aros
arrancan arrancar arrastrado arrastrar arrastre arrestado arribo arriendo arrojado arrojar
arroyo arteria arterias artes articulaciones asaltar asalto aseguraba asegurada asegurado
aseguran asegurar asegurate asegure aseguro asentado asiatica asiatico asimilar asiste asma
aspiran asquerosa asta asuma asumiendo asustada asustado asustados asustar atacan atacando
atacar atada atado atenas atender atentado atentados atento atico atrae atrapado atrasado atraso
atroz audiencia audios augusto aula aumentada aumentan aumentar aumentara aumentaron aumente
aumentos autor autos auxiliar auxilios avanzado aveces avecina aver avisa avise ayudan ayudar
ayudas ayude ayudo azar baches baile bajada bajan bajas baje bajen bajos bala balas balcones
balon balsa banca bancada bancos banda bandas banderas bando bandos banquero banquete barba
barbacoa barbarie barbaros barco bardo bares barranco barras barrera barreras barril barriles
barro basa basada basado basandose baso bastantes bata batallas batallon bate bateria baterias
baul beba beben bebes bebida bebo beca bello bellos bendita benito berta besa besar beso besos
beto birra blandos blanqueo bloquea bloqueando bobo bocas bocina boda bolas boleta bolsas bolso
boluda boludos bonitos bonos borda borde borges borra bota botellas botes botin brevemente
breves brinda brindando brindar brindo bromas bromeando bronca brote bruta bucle buda buenisima
buey buitre buitres bula busco busqueda busto caba caballero caballito caballos cabe cabello
cabellos caben cabezas cabida cabina cabo cabrera cabron cacao cachorros cadena caderas caera
caes cagan cagas cague caia caidas caidos caiga cajas cajita cajon cala calado calcuta caldera
calderon calentar caleta calida calido calienta califica calla callar callas callo calma calmar
calvo calzada camarera camas cambiamos cambian cambiando cambiar cambiarlo cambiaron cambias
cambie cambiemos cambien cambies camila camilo caminan caminos camion camionetas camisa campanas
campeona cana canas cancela cancelado cancelo cancha canchas candado cano canos cansa cansados
canse canso canta cantado cantando cante canto cantos caos capa capas capo capriles caracoles
caras carbono carcel cardenas cardiaca cardiaco carece carecia carencia cargada cargadas
cargador cargados cargan cargas cargos carino carita carnes carnet caro caros carpa carpeta
carranza carrasco carreras carretera carriles carros carta cartera carteras carton casada casado
casan casar casaron casas casco casera casita casos casta castilla cata cauca cauce caucho causa
causada causadas causado causados causando causaron causo cava cayera caza cazar ceballos
cebollas cedido ceja celos celu cenas censo centra centrada centrado centro cepa cera cerco
cerda cerdo cerradas cerrados cerradura cerramos cerraron cerre cerro cerros certamen cesado
cese cesion cesta chaco chapa chapo chasis chaves chavo checa checo chicas chicha chicos chino
chiquitos chisme chispas chistes chivo choca choto chulo chupar cielo cielos cientos cierra
cierro cierta ciertos ciervo cima cine cines cinico circo circuito circuitos ciro cirugias
cirujanos cita claros clase clausula clausulas clave claves clero clic clientes climas clinicas
clinico clinicos cobertura cobrado cobre cocaina coches cocido cocinando cocinar cocinas codos
coge cogen coger cogido cogiendo cogio coincidencia cojer colaborado colas colchones colera
colgado colgados colgar colima colina colocada colocadas colocado colocados colocando colores
colorido coman comando comandos comas combinado combinar comemos comento comenzado comenzar
cometiendo comica comicios comico comidas comienzan comienzo comienzos comieron comillas comite
comodos compa companeras companeros compania compendio compleja complejas complejo complejos
completado completar completas completos comporta comprendo comprueba compuesta compuestas
compuesto comuna cona concejo concentra conciencias concierne conclusiones conde condes conejos
confeccion congelado conocera conocernos conocimientos consciencia consejo considerables consigo
consistentes constitucional construcciones consultado consultas consulte consultor consultora
consumen consumido contaban contacta contactar contacto contactos contada contadas contados
contagio contando contaron contarte conte contenga contengan contenia contenian contenida
contenido contentos contesta contestado contestan contestar conteste contexto contextos
contienda contiene contigo conto controla controlada controladas controlador controlados
controlan controlando controlar convento convivencia cooperacion copa copas copia coran
corazones corea coro coronado coros corra correccion correcta correctas correctos corredor
corregido corren correo corres corria corrida corridas corro cortadas cortado cortados cortan
cortando cortar cortaron cortas cortazar corten cortes corto coser cosita cositas coso
cosquillas costado costar costara costaria costas coste costera costeras costilla cota coto crea
creamos crean crear creas crecen crecer creces creci crecia crecido creditos credo creemos crees
creian creias cresta creyendo creyente creyeron creyo cria crias cris cronicas cruce cuadrada
cuadrado cuadrados cuadro cuadros cuan cuantia cuarentena cuarta cuartos cuarzo cubierta
cubiertas cubiertos cubo cubriendo cuela cuelgan cuenca cuentan cuentas cuente cuento cuentos
cuerda cuerno cuero cuerpos cuervo cuestan cueste cuestiona cuestiono cueva cuida cuidad
cuidados cuidadosa cuidadoso cuido culos culpo culto culturas cumbia cumplida cumplidos
cumpliendo cumplio cuna cuota cupo cura curado curro curvas cuyo daba dais dama damas danada
danado dandoles dano danos dara daras daria dario darles darlo darse darte dato datos deba deban
debe deben deber debera deberian deberias debi debia debiamos debido debiendo debilidades
debilitado debio debito decada decia decida decidida decidido decido decis dedicar dedico
defecto defiende dejaban dejad dejalo dejando dejaran dejare dejaria dejarla dejas dejemos dejes
dela delito delitos demandas demasiadas demasiados demora demuestra denle depender dependiente
deposito depresion derechas derecho derechos desaparecida desaparecidas desaparecidos
desaparicion descanse descarada descarga descargar descargas descartado descartar descenso
describen describio describir descubre descubriendo descubrimiento descubrio descuido deseable
deseamos desee desesperados desierto desiertos desmadre despegar despegue despejado despertado
desperte despiertan despierte despierten desplazado desplegado destinada destinado destrozar
destruido destruye destruyen detectado detectar detenerse determina determino detienen deuda
devaluacion devolverle devoto devuelva devuelvan devuelven diaria diarios dices dicha dichos
dicto dientes dieran diferencial diferencian diferenciar diferencias dificulta dificultades diga
diganme digas digno dije dijeran dile dina diosa dioses dira diras direcciones directivos dirian
dirias dirija disculpa disculpas disfruta disfrutado disfrutan disfrutar disfrute disfruten
disfrutes disminuye disminuyen disponer disposicion disposiciones dista distinguido doblar
doctorado doctores dolar dolares dolorosa doloroso dominado domingos dominio dominios dona dones
dono dorada doradas dorado dorados dormia dote dotes dron dudar dudas dudo duela duelo duena
duenas duenos duermen duermes duermo duero duramente duran durar duras dure duros echan echar
echarle echas eche editar egresado ejes emergencias emocionados empanada empanadas empeorar
empezado empezara empiezan empiezas empiezo empujando encargado encerrada encerrado encontrar
encontro encubierto encuentran encuentras encuentre encuentren encuentres encuentros energetica
energeticas energetico energeticos energias enero enfermas enfermedad enfermeras enfermeria
enfermos enormes entendes entendido entendiendo entendio enteran enterar enteras entere enteros
entiendo entierro entran entranas entrando entrar entras entre entro envia envian enviara envio
equipado equivocada equivocadas equivocados eras eres escala escalada escano escapado escapan
escapar escasa escaso escoge esconden esconder escondidas escondidos escondite escriba escribano
escribas escriben escribi escribia escribio escribirlo escucha escuchan escuchar escuchas
escuchen escuches escucho esfera esfuerzos espacial espada espaldas especiales especias
espectacular espejo esperabamos esperada esperado esperan esperar esperas espere espesor
espiritu espiritus esposas esposos esquinas esquivar establece estables estara estare estas
estatus esten estero estima estimado estimados estirar estupida estupido estupidos estuvimos
evalua evaluacion evaluaciones evaluar evento evidencia evidente evidentes evita evitado evitan
exagerando examinar excelentes excesiva exceso excesos exclusivo existen existente existentes
expande explique exponiendo expresion expuestas expuestos extender extendida extendido extensas
extensos externas externos extiende extienden extorsion extracto extrae extraido extranar
extranas extranos extrema extremas extremidades extremo extremos fabulosa facil factura facu
falda falla fallan fallando fallas fallo fallos falsas faltaban faltado faltar faltaron faltas
falte fanatico fantastica fantasticos farc faro faros farsa faso favorece favores favorita
favoritas favorito favoritos feas feria ferias ferrea ferro feto fiar ficcion fiera fija fijo
filme fina finas fingir fino firma firmada firmando firmes firmo flaca flanco flota fluido
fluidos flujo flujos follar fomenta fomentar forma formaba formaban formadas formado formados
formales formalmente formando formarse forme formen formo foro forzadas forzados foto fotos
fraccion fracturas fragmento fragmentos frente fresa frescas fresco friccion frida fritas frito
fuentes fueran fueras fuere fuero fueros furia futura futuras gafas gales gallinas gallos galvez
gama gana ganada ganado ganan ganando ganar ganarse gancho gane ganso gasolina gasta gastan
gasto gastos gatitos generando geniales gentes gesta gesto gigantes gira girando giras giro
giros globales globos glorioso goce goles golfo golpea golpeando golpes goma gordas gordito
gordos gorra gorro gotica goya goza graba grabo gracia graciosa graciosas gracioso graduo
graficas gral gramos grandes grandeza grandiosa grano granos grasas grata gremio gremios grieta
grifo gripe gritan grua gruesas grueso grupo guantes guapa guapas guarda guardas guarde guarden
guardo guay guita gustar gustara gustas guste gusten gustos haber habiendo habitacion habla
hablaba hablaban hablame hablan hablando hablara hablare hablarle hablarte hablas hable hablemos
hables habre habremos hacen hacerlos hacernos haces hacha haciamos hacienda haciendas haciendole
haciendolo haciendose haga hala halcon hallados hallan hallar hallaron hallo hambrientos haras
haremos haria harias hartos haya hechas heladas herido heridos hermanas hermandad hermanos
hernando hiere hierro hijas hijos hinchas hito hitos hoja hojas hombre honesta honesto hongo
honra honrados horribles hoyos hueca huecos huelen huelgas huella huelva huerfano huerta huerto
hueva huevos huir humanas humedad humedos humo huye huyo iban ibarra iconos identica identicas
ignorado iguala impaciente imparcial impensable impidiendo implacable implantar imponerse
imponiendo importaba importado importar importe importo imposibles impresion impusieron incas
incompleta incompleto incorrecto incursion indiferencia inestable infecciones infectados
influido informada informales infraccion ingles inglesas ingleses ingresos iniciada iniciado
inmenso inocentes inquietud inscribir insecto insectos insegura insensible inspeccion instinto
insto insuficiente intensa intensas intensivo intensos intentaba intentado intentan intentar
intentara intentare intentas intente intenten intentes intentos interesa interesan interesar
interese intereses intereso internas internos inusual inventa inventado inventan inventando
inventar invento inventos invertido invisibles invitando inyeccion irregulares jabon jaja japon
jara jefa jefes jeje joda jode jodiendo jornadas joyas jueces juegan juegas juegos jueza jugaba
jugada jugador jugara jugos juguetes juntan juntando juntar juntaron junto jurada jurado jurar
juro justa justas justos juzga juzgado juzgando juzgar kilo kilogramos kilometro labores ladera
lados lago lagunas lamentar lamina laminas lamparas lancha lanza lanzando lapso larga largo
lastimar lastre latam latas lazo leal leales leas lejanas lenguas lenta lente lentos lesa
levantaba levantan levantando levantarme levantaron levantarte levantas levantate levante
levanten leyo libera libero libres libros lidera liebre lienzo ligar ligas ligeras ligeros lila
limita limite limites limito limpiar limpias limpieza lina lindas lindo linea lino liquidar
liquidez lira liso listos literalmente litio litro llamaba llamaban llamadas llamado llamados
llamando llamara llamaria llamarla llamarle llamarlo llamarse llamas llames llano llave llaves
llega llegados llegaremos lleguemos llenan llenando llenar llenas llene llenos llevamos llevan
llevando llevar llevas lleve lleven lloran llores llosa lloviendo lobo loca locos lodo logia
logran lograr logras logre logro lomo lona lope lora lote lotes lucen luces lucha luchan
luchando luchar lugo lujos lunas luto machado madera madero maestra maestras maestria magno mago
malas maldita maldito malestar maleta malla malos mamar mamas mamen mami mamita manada mananas
manda mandan mandando mandaron mandas mando mandos manejado manos mantenerme mantenerte mantenia
mantienen manto manzanas mapa mapuches maravillas maravillosa marca marcada marcadas marcado
marcador marcados marcan marcando marcas marcha marchado marchando marchar marcharse marchas
marcial marea mares marge maridos marinero marques marquesa marquez marron marsella marte masa
masacres mascotas massa maten materias materna mato mauro maza mazo meca mecha medica medicacion
medicas medicinales mediciones medico medida medidas medido medios medir meditar mejia mejorada
mejoran mejorar mejoras mejore mejoria melodia melodias membrana mena mencion menciona mencione
menciono menem mensajero mensuales menta mentales mentido mentir mentiras mentirosa mera
mercados merida mero meros mesas mesias metan metas mete meten meterse metes meti metia metida
metido metio meto mexicali meza mezquita mias mide miedos miel miembros mientas miente miento
mierda migrante mijo millon minas minimas minimos mios mirad mirada miradas mirado miran mirando
mirar miras mire mires misa misas miserables mismas mismos mistico mito mitre mocion moda
moderacion moderador moderados modernos modesta modesto modo modos mola molestaba molestado
molestan molestas moleste molestos molino momento momentos monde monedas monitores monja monos
monta montando montes monto montos montt mora morbo moria moro moros morro mosca mostrado
mostrador mostrando mota motin motos moverme moverte movia movida moviendose movil moya mozo
muchachas muchacho muchachos muchisimas muchisimos muchos mudo muera mueren mueres muertas
muerte muertes muertos muestran muestras muestre muestren muestro mueva mugre mula multiples
muneca munecos murio muros musa musculos museo musicales muslos nace naciente nadar naranjas
naranjo nata nave navio necesita necesitado necesitan necesitar necesitas necesite necesiten
necesites negar negativa negativas negativos negros nena nene nenes nervio nerviosa nervioso
nerviosos neta neto nevera nexo nido nidos niegan niego nietos nieve nilo ninas ninez niza
nominado nono nooo normalidad normas norte nosotras notan notar notas novena novias novios nuca
nudo nuestras nuestros nueva nuevos nula numeros nunez objetos obrador obras obvia occidente
ochoa ocio ocupaba ocupaban ocupadas ocupados ocupando ocuparon ocurrido ocurriendo odian odiar
odias odie odio ofrecida ofreciendo oigo oleo olimpia olimpica olimpicos oliva olivo olla olores
olvida olvidada olvidados olvidando olvidemos olviden olvides operaciones operador operadora
operan operando operativos opina opinar opinas opino opio oponerse opositor opresion opto
opuesta opuesto ordenado ordenando orientado originado orilla orto oscuras oscuros osos otero
oveja ovejas oyen oyendo oyes pacientes paco padece padecer paga pagada pagado pagamos pagando
pagar pagara pagaron pagas pagina pago pags pais paisajes paises paja pajaros pala palas
palencia paliza palma palomas palos pampa pana pandilla panes panico pantallas papas papi
paquetes paraba parada parados paramo paran parana paranoico pararon paras parches parciales
pardo parecen parecera pareceria pareces parecian parecida parecidas parecido parecieron parecio
parejas pares pariente parientes pario paros parques parra parrilla parte parten partes partidas
partidos partiendo partimos partir parto pasaba pasadas pasados pasaje pasajes pasamos pasan
pasando pasar pasara pasaran pasarse pasemos pasen pases pasito pasos pastas pasto pastos patada
patata patatas patear patios pato patos patrias patriotas pausa pauta pautas pavimento pavo
pecado peces pechos pedi pedia pedido pedimos pedira pedirles pega pegada pegado pegados pegas
pekin pelado peleamos pelean pelear peleas peli peligros peligrosa peligrosas peligrosos pelis
pelos pelotas peluca penales pendientes pene pensabamos pensaban pensabas pensada pensado
pensando pensara pensaria pensaron pensas pensemos penso peon pepa peque pequenas pequenos pera
perdamos perdedor perdemos perdi perdia perdida perdidas perdidos perdiera perdimos perdona
perdonar perdone perdono perfectas perfectos periodo perito perla permisos permita permitan
permitia permitio permito peron perras persa perseguido persiguen personaje personajes
personales pesa pesaba pesadas pesados pesar pesas pescado pese pesquera pesquero petro
petrolera petrolero petroleros piba pibe pibes pica picado picar pico picos pida piden pides
pidiendole pidiera pido pieles piensa piense pierda pierdas piernas pija pilar pilas pillo pina
pinar pinas pinche pinches pinguino pino pinochet pinos pinta pintada pintadas pintando pintas
pinto pintores piola pipa pisco pisos pista pistas pito placas placer plaga planas planchas
planea planeado planeando planear planeta planetas plano plantado plantas plantea plantean
planteando plantear plantilla plastica plasticas plasticos plata plateado platino platon platos
playa playas plazo pleito plena pluma poblada pobladas poblado poblados pocas pocos podamos
poder poderosa poderoso podia podiamos podian podido podio podran podras podre podremos podrias
poeta polaca polis polla pollos polos polvo ponce pondra pondremos pondria ponemos ponen ponerle
ponerme ponerte pones ponga pongamos pongas poniendose ponle ponte popa porciones poros porro
porta portada portadas posada posadas posesion posgrado posibles posicion posta poste postea
postgrado postura posturas pozo pozos practica practican practicar practicas practico practicos
prado prados prat precaria precio precios preciosa precioso precisos predicar predio prefecto
preguntaba preguntado preguntale preguntamos preguntan preguntar preguntarle preguntarme
preguntarse preguntarte preguntas pregunte pregunten preguntes premisas prendido preocupaba
preocupan preocupar preparada preparado preparados preparan presa presenta presentada presentado
presentaron presente presento presiona presionar presiones preso presta preste presto presunta
presunto presuntos pretender prevenir previene previo prevision prieto primaria primarios primas
primavera primeras primero primos principado principios prisas prision proa probables probada
probando probarlo procesion producen producido produciendo productiva productivas productivo
productivos productos profundas profundos progresar progreso progresos promedio promedios pronta
propuse prosa protesta protestan protestas proyectiles proyectos prueban pruebas pruebe pudiendo
pudieran pudieras pudieron pueda puedan puedas puente puertas puestas puestos pujol pulido pumas
punos pura puro puros pusiera pusieran puta putas puto putos queda quedado quedando quedara
quedaran quedaria quedarian quedarnos quedarse quedas queden quedes quejan quejar quejarme quema
quemado quemados quemando quemaron quemo queramos queriamos querian querias querida queridos
querra querria quesos quiebra quiebre quieran quieras quieren quieres quieta quieto quinta
quintana quintero quinto quisieran quisieras quisieron quisimos quitas quiten racion rafa raices
raiz rajoy ramo rampa rana rancho rango rapero rapidas rapidos raras raros rasgo rastro rata
ratas ratito raton raya rayo rayos raza reaccionan reaccionar reacciones reacciono recepcion
receta rechazada rechazado rechazan rechazar reciba reciben recibes recibi recibo reciente
reclamado recogen recoger recogidas recogido recogidos recomiendo reconocimiento recordarle
recorridos recorriendo recreacion rectas recuento recuerda recuerdan recuerdas recuerde
recuerden recuerdos recuperado recurre recurrente recurrentes redaccion redes reduccion reducen
reducida reducidas reducidos reencuentro reflejada reflejado reforzado refresco regente regresa
regresamos regresan regresando regresar regresaron regrese regresen regresiva regula regulada
regulado regulador regulan regulares reia reir rejas remover rencor renta rentable repaso
repentino repetida repetidas repetidos repetir repetirlo repita repite reporta reporte reporto
reposicion represion requerido resalto resolver resolvera respalda respaldado respaldar respaldo
respetado responda respondan responden responder respondera respondes respondi respondia
respondido respondio respuesta resta restantes restos resuelta resuelto resueltos resuelva
resulta resultado resultan resultante resultar resulte resulten retirada retirado retiran
retirarse retiro reto retorica retornar retos reventar revisando revueltas reza rezar rezo ricos
riendo rima rinde rinden rinon rioja rios risas rito ritos roba robada robadas robado robados
robar robarle robos roca rocas roce rodar rodeados rodillas rogar rolando rollo rompa rompen
romper rompiendo ronda ropa ropas rosca rotas rotos rudo ruidos rumano rusa rusas ruso ruta
sabados saben sabes sabiamos sabian sabias sabido sabiendo sabina sabio sabios sable sabor sabra
sabremos sabria sacada sacado sacados sacan sacar sacarlos sacas sacos sagradas sagrado salada
salado salas salchichas saldo salga salgado salgamos salgo salian salidas saliente salieran
salis salmo salomon saltan saltos salud saluda salva salvado salvando salvar salve sanar sanas
sano sant sanz sapo saquen saqueo saques secar secas secesion secta seda sede sedes segui
seguian seguid seguida seguido seguidor seguidores seguimos seguir seguira seguis segundas
segundo seguras seguridad seguros semanal semanales sena senado sencillas sencillos senda sendas
seno senor senoras senoria senos sensibles sentado sentados sentar sente sentidos sentimos
sentira sentiras sentiria sento sepa separa separacion separadas separar separaron separarse
sequia seran seras sere seres serian serias serio serna serra servia servidor severas severos
sexo sexos sexuales sida sienta sienten sientes siga sigan sigas siglo signos sigues siguiera
sillas similares sintio siria sirio sirva sirven sirvo sistemas sitios soberana soberano sobra
sobres sobrinos sobrio socia soga sois soja solas solian solidas solido solidos solis solista
soltar soltera solteras sonado sone sonora sonriendo sopa sopla soportan soportar soporte
soportes soporto soria sorteo sosa sostienen soto sres suaves suba suben subes subi subia subida
subo sucediendo sucio sucre sueca sueco suecos sueldo sueldos suele suelen suelos suena suene
suenos suerte suficientes sufre sufriendo sufro sugerido sumar suministrar suministro
suministros supe supera superacion superada superado superando supere superficiales supero
suponiendo supresion supuesta supuestas supuestos surgen surgiendo surgieron suspende suspender
suspendio suspenso sustenta tablas tabu tacto tala talla talon tamanos tamayo tampico tanda
tania tantas tantos tapa tapas tarado tardan tardar tardia tardo tarea tarragona tarta techos
tecla teclados tejado tejidos telas tele tema temas temblar teme temer temido temperaturas
temprana tempranas tendido tendre teneis tener tenes tenga tengamos tenis tentativa termica
termico terminaba terminada terminado terminan terminar terminara terminas terminen termines
terminos terribles tesis teta texto textos tias tiempos tierna tierras tigre timo tinta tinte
tinto tios tipa tipo tipos tiraba tirados tiran tirano tirar tiras tiren tiron tiros toallas
tocara tocas tolerante tolerar tomaba tomados toman tomara tomaria tomarme tomarte tome tomes
tomos tono tonos tonta tonto tope topo torna torno toros torpe torre tortillas tortugas tortura
torturas tostadas tovar traba trabaja trabajado trabajan trabajar trabajas trabaje trabajen
trabajos trad traducido traen traer traes traiga traigo traje trajo tramo tramos tranquilas
tranquilos transito trapos traslado tratado tratados tratan tratandose tratar tratarse tratas
trate trato tratos traza trazado trazar tren trigo tristes tronco tronos tropa tropas trozo
truco tubo turno turnos tuya tuyo ubicados uniformes unimos urgentes uribe usaban usada usados
usan usara usaria usarlas usarlo usas usen usos usted util utiles vaca vacias vacios vaga vagos
valen valer vales valia valida validas validez valido validos valiente valientes valio valle
vano vara varas varia variadas varian variar vasos vasto vayas veamos vecinal vecinas vecinos
veian veis vela velada vena venado venas vendan vende vender vendes vendia vendida vendidas
vendiendo vendo vendra venga venganza vengas venian venida venido venir venis venta ventaja
ventajas ventanas ventas verdes vere veria verle verme verte viaja viajando viajo vias vibrante
vicio vidal viejas viejos viena vienen vienes viento viera vieron vigila vigo vila vina vinos
violacion violando violenta violentas violento violentos visado visito vistas viste vistos
vitamina vitaminas vito vive vivi vivio vivos voces volvamos volvemos volverse volvia volviendo
vosotros votando votaron vuela vuelo vuelva vuelvas vuelven vuelves vuestra vuestras vuestro
vuestros webs zombis zonas
"""
