export function KitSection() {
  return <p>Kit</p>;
}
