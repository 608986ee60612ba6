export function StageSection() {
  return <p>Stage</p>;
}
