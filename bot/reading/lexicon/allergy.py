"""Signs of an allergic reaction: hives, and a face that swells."""

from __future__ import annotations

CLASSES = {
    "hiveword": """
        hives hive welts wheals urticaria nettle_rash ronchas roncha habones habon ronchitas
        """,
    "bumpword": "bumps lumps spots bolitas granitos bultitos blotches weals granos bultos ronchones",
    "faceword": """
        face muzzle snout lips lip eyelids eyelid eyes eye jowls nose cara carita hocico trompa
        labios labio parpados parpado ojos ojo cachetes belfos
        """,
    "facepuff": """
        puffed puffed_up puffy blown_up ballooned balloon swelled swollen swelling swells bloated
        hinchada hinchado hinchados hinchadas hincho hincharon inflamada inflamado inflamados
        inflamo hinchando hinchandose hinchaditos globo
        """,
}

RULES = {
    "allergy": """
    = hives
    <hiveword> -bees -bee -abejas
    <bumpword> ~2 all over|por
    <bumpword> ~ on|under|in|all|across|en ~ over|the|his|her|toda|todo|la? skin|piel|body|cuerpo -<wound>
    <bumpword> ~2 por ~ todos|toda|todo|todas
    brotaron|brotado|brotando|salieron|came_up|broke_out|coming_up ~3 <bumpword>|<hiveword>
    <bumpword> ~ en|por ~ todo|toda
    covered|full|lleno|llena|cubierto|cubierta ~ in|of|de|con <bumpword>|<hiveword>
    = swollen_face
    <faceword> ~4 <facepuff> -<wound> -<joint> -crying
    <facepuff> ~3 <faceword> -<wound> -<joint> -crying
    """,
}

NEGATED: dict[str, dict[str, str | None]] = {
    "allergy": {"hives": None, "swollen_face": None},
}
