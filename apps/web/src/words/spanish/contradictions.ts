export const contradictionsSpanish = {
  "agree.same id": "El id “{id}” está más de una vez. Dale a cada uno el suyo.",
  "agree.kitchen without a name": "La cocina no tiene un nombre que se pueda leer. Ponle uno.",
  "agree.place without a name":
    "“{id}” no tiene un nombre que se pueda leer. Ponle uno: los planes lo llaman por su nombre.",
  "agree.same name": "“{id}” se llama “{name}”, igual que otro lugar. Dale a cada uno su nombre.",
  "agree.in no refrigerator":
    '“{id}” es parte de un refrigerador y no está en ninguno. Escribe en cuál: "refrigerator".',
  "agree.not for a refrigerator":
    '“{id}” no es algo que haya en un refrigerador, y está en “{refrigerator}”. Quita "refrigerator" o dale otro "kind".',
  "agree.unknown refrigerator":
    "“{id}” está en “{refrigerator}”, que no existe. Escribe el id de un refrigerador de esta cocina.",
  "agree.vent without rates":
    '“{id}” tiene rejilla, y no cuánto aire cambia abierta, a la mitad y cerrada. Da las tres cifras o quita "vent".',
  "agree.rates without vent":
    '“{id}” tiene tres cambios de aire y ninguna rejilla. Escribe "vent" o da un solo cambio de aire.',
  "agree.rates out of order":
    "“{id}” cambia el aire {open}, {half} y {closed} veces por hora abierta, a la mitad y cerrada. Abierta es lo más y cerrada lo menos: ponlas en ese orden.",
  "agree.place freezes":
    "“{id}” está a {celsius} °C, y ahí lo fresco se congela. Necesita al menos {least} °C; si no, déjalo fuera.",
  "agree.as warm as the room":
    "“{id}” está a {celsius} °C dentro de un refrigerador, en una cocina de {room} °C. Dentro hace más frío: mide los dos otra vez.",
  "agree.warmer than the room":
    "“{id}” está a {celsius} °C en una cocina de {room} °C. Nada lo calienta más de {most} °C: mide los dos otra vez.",
  "agree.colder than the room":
    "“{id}” es una mesa a {celsius} °C en una cocina de {room} °C. Tiene el aire de la cocina: mide los dos otra vez.",
  "agree.lit": '“{id}” es una alacena oscura y tiene luz. Escribe "lit": false o haz de ella una mesa.',
  "agree.more room than air":
    "Los lugares de “{id}” tienen {room} L de espacio, y adentro hay {litres} L de aire. Corrige lo uno o lo otro.",
  "agree.larger than the refrigerator":
    "“{id}” tiene {room} L de espacio, en un refrigerador de {litres} L. Corrige lo uno o lo otro.",
  "agree.refrigerator as warm as the room":
    "“{id}” está a {celsius} °C en una cocina de {room} °C. Un refrigerador está más frío: corrige uno de los dos.",
  "agree.refrigerator freezes":
    "“{id}” está a {celsius} °C: eso es un congelador. Solo se planea para lo fresco.",
  "agree.coil warmer than the air":
    "La superficie fría de “{id}” está a {coil} °C y el aire a {celsius} °C. La superficie está más fría: corrige uno de los dos.",
} as const;
