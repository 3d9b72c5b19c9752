/** How it stands: telephone, part from the side, and a lit page behind it. */
export function ShotSketch() {
  const teeth = Array.from({ length: 7 }, (_, i) => `L${92 + i * 6} 38L${95 + i * 6} 44`).join("");
  const below = Array.from({ length: 7 }, (_, i) => `L${131 - i * 6} 82L${128 - i * 6} 76`).join("");
  return (
    <svg class="drawing shot" viewBox="0 0 240 120" font-size="9" role="img">
      <title>The telephone looks at the side of the plug, with a white page behind it</title>
      <rect class="paper edge" x={70} y={8} width={100} height={104} />
      <path class="steel edge" d={`M78 30H90V44${teeth}L136 50V70${below}L90 82V90H78Z`} />
      <path class="axis line" d="M64 60H178" />
      <text x={178} y={20}>
        white page
      </text>
      <text x={178} y={64}>
        axis level
      </text>
      <text x={4} y={64}>
        from the side
      </text>
    </svg>
  );
}
