/** Animals that crush or dig up small and soft plants. Common practice, no source. */
const heavy = /gecko|skink|lizard|toad|tortoise|turtle|snake|crab|rodent|mouse|digging|burrow|heavy/i;

/** Whether the animals that a client wants would crush small plants, by their names. */
export function crushesPlants(animals: string): boolean {
  return heavy.test(animals);
}
