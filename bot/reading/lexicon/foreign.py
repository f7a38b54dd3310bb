"""French, German and Portuguese: small words that tell the language, and words of danger."""

from __future__ import annotations

FUNCTION: dict[str, frozenset[str]] = {
    "fr": frozenset(
        "je tu il elle nous vous ils elles le les des du au aux et est sont ne pas que qui lui "
        "son sa ses ce cette dans sur pour avec plus tres bien merci bonjour chien chat mange dort "
        "fait donne jour matin soir beaucoup mais aussi depuis comme tout toute va suis ai ont sang "
        "votre notre mon ma mes saigne respire respirer peut veut pris boite tombe a".split()
    ),
    "de": frozenset(
        "ich er sie es wir ihr der die das dem den des ein eine einen ist sind war hat habe haben "
        "nicht kein keine und oder aber mit von zu zum zur im am auf aus bei nach seit heute gestern "
        "ihm ihn sehr gut danke hund katze frisst geht wird noch schon auch mehr kann will blut "
        "wieder tablette gegeben atmet blutet wunde viel wie dass mein meine sein seine".split()
    ),
    "pt": frozenset(
        "eu ele ela nos eles elas o os um uma do da dos das no na nos nas em e com para por nao "
        "esta estao muito bem mais ja foi tem tinha obrigado obrigada cachorro cao gato gata hoje "
        "ontem manha noite dei deu comeu bebeu dormiu meu minha seu sua isso agora sangue direito "
        "desmaiou consegue respirando tambem quando ate so depois comprimido".split()
    ),
}
OURS = frozenset(
    "the a an of to in on at is it he she his her was and my i you with not for has had but this "
    "that its hes shes from they we are been did dont wont today yes no "
    "el la los las una de que en es se lo su con por para y pero ya muy hoy ayer si mi me nada "
    "tiene come mas como sin del al porque gracias le les esta un bien anda".split()
)
DENIED = frozenset(
    "pas plus jamais aucun aucune sans kein keine keinen nicht ohne nie nao nunca sem nenhum "
    "nenhuma".split()
)
DANGER: dict[str, tuple[str, str, str | None]] = {
    "ne respire": ("breathing", "laboured", None),
    "respire* mal": ("breathing", "laboured", None),
    "respire* difficilement": ("breathing", "laboured", None),
    "peine respirer": ("breathing", "laboured", None),
    "mal respirer": ("breathing", "laboured", None),
    "etouff*": ("breathing", "laboured", None),
    "suffoqu*": ("breathing", "laboured", None),
    "atmet nicht": ("breathing", "laboured", None),
    "atmet schwer": ("breathing", "laboured", None),
    "atmet schlecht": ("breathing", "laboured", None),
    "atemnot": ("breathing", "laboured", None),
    "luft": ("breathing", "laboured", None),
    "erstick*": ("breathing", "laboured", None),
    "nao respir*": ("breathing", "laboured", None),
    "nao consegue respir*": ("breathing", "laboured", None),
    "nao esta respir*": ("breathing", "laboured", None),
    "respir* mal": ("breathing", "laboured", None),
    "falta ar": ("breathing", "laboured", None),
    "sufoc*": ("breathing", "laboured", None),
    "engasg*": ("breathing", "laboured", None),
    "saign*": ("incision", "bleeding", None),
    "hemorragi*": ("incision", "bleeding", "heavy"),
    "sang": ("incision", "bleeding", None),
    "blutet": ("incision", "bleeding", None),
    "blutung*": ("incision", "bleeding", None),
    "blut": ("incision", "bleeding", None),
    "sangr*": ("incision", "bleeding", None),
    "sangue": ("incision", "bleeding", None),
    "convuls*": ("seizure", "yes", None),
    "crise epilep*": ("seizure", "yes", None),
    "epilep*": ("seizure", "yes", None),
    "krampf*": ("seizure", "yes", None),
    "krampft": ("seizure", "yes", None),
    "anfall": ("seizure", "yes", None),
    "inconscien*": ("energy", "collapsed", None),
    "evanoui*": ("energy", "collapsed", None),
    "effondr*": ("energy", "collapsed", None),
    "ne reveille": ("energy", "collapsed", None),
    "ne reagit": ("energy", "collapsed", None),
    "bewusstlos*": ("energy", "collapsed", None),
    "ohnmacht*": ("energy", "collapsed", None),
    "zusammengebrochen": ("energy", "collapsed", None),
    "wacht nicht": ("energy", "collapsed", None),
    "reagiert nicht": ("energy", "collapsed", None),
    "desmai*": ("energy", "collapsed", None),
    "nao acorda": ("energy", "collapsed", None),
    "nao reage": ("energy", "collapsed", None),
    "empoison*": ("swallowed", "poison", None),
    "vergift*": ("swallowed", "poison", None),
    "gift": ("swallowed", "poison", None),
    "envenen*": ("swallowed", "poison", None),
    "veneno": ("swallowed", "poison", None),
    "schokolade": ("swallowed", "poison", None),
    "chocolat*": ("swallowed", "poison", None),
    "gencives blanch*": ("gums", "pale", None),
    "zahnfleisch weiss": ("gums", "pale", None),
    "gengivas brancas": ("gums", "pale", None),
}
"""Words, or the beginnings of words (``*``), in order → topic, value, detail."""
