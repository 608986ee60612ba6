export function CablesSection() {
  return <p>Cables</p>;
}
