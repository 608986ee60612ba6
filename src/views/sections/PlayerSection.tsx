export function PlayerSection() {
  return <p>Player</p>;
}
