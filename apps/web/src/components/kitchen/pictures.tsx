import type { ReactNode } from "react";

/* Line drawings of our own, each in a square of 80 × 80. They only help: every one stands beside its words. */

const person = (
  <>
    <circle cx="62" cy="20" r="6" />
    <path d="M62 26V50M52 34L62 30L72 34M62 50L55 72M62 50L69 72" />
  </>
);
const refrigerator = (top: number) => (
  <path d={`M10 ${top}H42V72H10ZM10 ${top + (72 - top) * 0.35}H42M36 ${top + 5}V${top + 10}`} />
);
const ground = <path d="M4 72H76" />;
const chest = (inside: ReactNode) => (
  <>
    <path d="M14 8H66V72H14ZM14 26H66" />
    {inside}
  </>
);
const drawers = (count: number) =>
  chest(
    <>
      {count > 0 && <path d="M14 44H66" />}
      {count > 2 && <path d="M14 58H66" />}
      {count > 1 && <path d={count === 3 ? "M40 58V72" : "M40 44V72"} />}
      {count === 0 && <path d="M14 49H66" strokeDasharray="2 6" />}
    </>,
  );
const bottle = <path d="M32 10H48V22L54 32V72H26V32L32 22ZM26 44H54" />;
const thermometer = (
  <>
    <path d="M36 10H44V50A12 12 0 1 1 36 50Z" />
    <path d="M40 26V58M50 16H58M50 26H55M50 36H58" />
  </>
);
const house = <path d="M10 36L40 12L70 36M16 32V70H64V32" />;
const drop = (x: number, y: number) => (
  <path d={`M${x} ${y}Q${x - 7} ${y + 11} ${x} ${y + 13}Q${x + 7} ${y + 11} ${x} ${y}`} />
);
const cupboard = <path d="M14 12H66V68H14ZM40 12V68M35 36V44M45 36V44" />;
const bag = <path d="M22 20L26 14L32 20L40 14L48 20L54 14L58 20V70H22Z" />;

const drawings = {
  "refrigerator.hip": [refrigerator(48), person, ground],
  "refrigerator.shoulder": [refrigerator(30), person, ground],
  "refrigerator.overhead": [refrigerator(6), person, ground],
  "refrigerator.litres": [
    <path key="plate" d="M12 24H68V58H12ZM20 34H36M20 42H44M20 50H30" />,
    <path key="litre" d="M54 34V50H62" />,
  ],
  "refrigerator.none": [<path key="dashed" d="M22 8H58V72H22ZM22 30H58" strokeDasharray="4 6" />, ground],
  "drawers.0": [drawers(0)],
  "drawers.1": [drawers(1)],
  "drawers.2": [drawers(2)],
  "drawers.3": [drawers(3)],
  "drawers.4": [drawers(3), <path key="upper" d="M40 44V58" />],
  "door.yes": [
    <path key="box" d="M8 10H38V72H8ZM38 10L70 18V76L38 72" />,
    <path key="shelves" d="M42 28L66 33V40L42 36ZM42 50L66 54V61L42 58Z" />,
  ],
  "door.no": [<path key="box" d="M8 10H38V72H8ZM38 10L70 18V76L38 72" />],
  "cold.freezes": [bottle, <path key="ice" d="M40 48V68M31 53L49 63M49 53L31 63" />],
  "cold.ordinary": [bottle, <path key="good" d="M33 58L38 64L48 50" />],
  "cold.turns": [bottle, <path key="curds" d="M30 52Q34 48 38 52T46 52M32 61Q36 57 40 61T48 61" />],
  "cold.reading": [thermometer],
  "room.cool": [house, <path key="flake" d="M40 40V62M30 45L50 57M50 45L30 57" />],
  "room.ordinary": [house, <path key="table" d="M26 54H54M30 54V66M50 54V66M34 54V46H46V54" />],
  "room.hot": [
    house,
    <circle key="sun" cx="40" cy="51" r="7" />,
    <path
      key="rays"
      d="M40 39V35M40 63V67M28 51H24M52 51H56M31 42L28 39M49 42L52 39M31 60L28 63M49 60L52 63"
    />,
  ],
  "room.reading": [thermometer],
  "air.dry": [
    <path key="loaf" d="M12 62V40Q12 24 40 24T68 40V62Z" />,
    <path key="cracks" d="M28 26L32 40L27 50M50 25L46 38L53 48" />,
  ],
  "air.ordinary": [<path key="window" d="M16 12H64V68H16ZM40 12V68M16 40H64" />],
  "air.damp": [
    <path key="window" d="M16 12H64V68H16ZM40 12V68M16 40H64" />,
    drop(28, 18),
    drop(53, 21),
    drop(27, 47),
    drop(52, 46),
  ],
  "air.reading": [
    <circle key="dial" cx="40" cy="40" r="28" />,
    <path key="needle" d="M40 40L54 26M18 52L23 49M16 36H21M28 19L31 24M62 52L57 49" />,
  ],
  "cupboard.cool": [cupboard, <path key="flake" d="M27 46V60M21 50L33 56M33 50L21 56" />],
  "cupboard.warm": [cupboard],
  "cupboard.none": [<path key="dashed" d="M14 12H66V68H14ZM40 12V68" strokeDasharray="4 6" />],
  "cellar.cellar": [<path key="stairs" d="M6 20H22V34H36V48H50V62H74M6 20V70H74V62M50 20H74V48" />],
  "cellar.balcony": [
    <path key="rail" d="M6 44H74M6 70H74M12 44V70M24 44V70M56 44V70M68 44V70" />,
    <path key="crate" d="M30 52H50V70H30ZM28 47H52V52H28Z" />,
    <circle key="sun" cx="62" cy="16" r="7" />,
  ],
  "cellar.neither": [house],
  "wraps.paper bag": [bag],
  "wraps.perforated bag": [
    bag,
    <path
      key="holes"
      d="M32 34h.1M40 34h.1M48 34h.1M32 46h.1M40 46h.1M48 46h.1M32 58h.1M40 58h.1M48 58h.1"
      strokeWidth="5"
      strokeLinecap="round"
    />,
  ],
  "wraps.closed film bag": [
    <path key="bag" d="M18 16H62V70H18ZM18 24H62" />,
    <path key="shine" d="M26 62L44 36M34 64L50 42" />,
  ],
  "wraps.damp towel": [
    <path key="towel" d="M14 18H66V60H14ZM14 26H66M14 52H66" />,
    drop(30, 60),
    drop(48, 60),
  ],
  "wraps.beeswax cloth": [
    <path key="cloth" d="M12 16H68V66Q54 70 40 66T12 66Z" />,
    <path key="cells" d="M40 28L48 33V43L40 48L32 43V33Z" />,
  ],
  "wraps.foil": [
    <path
      key="roll"
      d="M12 30A8 12 0 1 1 12 54A8 12 0 1 1 12 30M14 30H62V54L68 60H30L24 54H14"
      transform="translate(2 -4)"
    />,
  ],
  "wraps.lidded box": [<path key="box" d="M12 30H68V38H12ZM16 38L20 68H60L64 38" />],
  "wraps.glass of water": [
    <path key="glass" d="M22 20L28 70H52L58 20ZM25 38H55" />,
    <path key="stem" d="M40 60V8M40 20Q50 18 52 8Q42 8 40 20" />,
  ],
  "wraps.none": [<path key="hands" d="M16 44Q28 60 40 60T64 44" strokeDasharray="4 6" />],
  unknown: [<path key="mark" d="M28 30A12 12 0 1 1 44 42Q40 44 40 50V52M40 62V64" strokeWidth="4" />],
} satisfies Record<string, readonly ReactNode[]>;

export type PictureName = keyof typeof drawings;

/** One of the drawings; it says nothing that the words beside it do not. */
export function Picture({ of }: { readonly of: PictureName }) {
  return (
    <svg className="picture" viewBox="0 0 80 80" aria-hidden="true" focusable="false">
      {drawings[of].map((part, index) => (
        <g key={index}>{part}</g>
      ))}
    </svg>
  );
}
