export function MicsSection() {
  return <p>Mics</p>;
}
