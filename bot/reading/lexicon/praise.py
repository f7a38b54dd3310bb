"""What stands beside an answer and weighs nothing: praise, small comments, goodbyes."""

from __future__ import annotations

CLASSES = {
    "praised": """
        boy girl lad lass pup puppy doggy kitty baby nino nina chico chica perrito perrita gatito
        gatita bebe muchacho muchacha
        """,
    "praising": "good clever brave sweet lovely best smart precious buen buena lindo linda",
    "hero": """
        star champ champion hero trooper angel sweetheart legend soldier darling gem treasure
        superstar sweetie campeon campeona amor guerrero guerrera sol valiente angelito princesa
        rey reina tesoro encanto santo santa
        """,
    "ado": """
        fuss drama bother hassle dramas faff bronca broncas drama lata escandalo batallar pelear
        protestar chistar remilgos
        """,
    "partday": "day evening night afternoon weekend rest dia noche tarde fin tardes noches dias",
}

RULES = {
    "aside": """
    = whole
    <praising> little|old? <praised> -<neg>
    what|such a little|real|proper? <hero>|<praising> little? <praised>? -<neg>
    he|she|hes|shes|is a|my|such such|a|real|little? <hero>
    hes|shes my|such|a a|little? <hero>
    no|sin|without any|mucho? <ado> at? all? -<meds>
    piece of cake
    easy peasy
    proud of him|her|them|you
    love|loves him|her so|to? much|bits?
    lots of cuddles|kisses|love|hugs
    have|enjoy a|your nice|good|great|lovely <partday>
    speak|talk|chat|see you? tomorrow|later|soon
    thanks|thank you? for asking|checking|caring|everything
    es un|una|mi|todo|toda un|una? <hero>
    un|una|mi <hero>
    buen|buena|lindo|linda <praised>
    que|muy|super lindo|linda|valiente|bonito|bonita
    se porto muy|super|re? bien|excelente
    muy bien portado|portada
    buen|buena|buenos|buenas|lindo|linda <partday>
    bendiciones|bendito
    hasta manana|luego|pronto
    gracias por preguntar|todo|estar|su
    """,
}
