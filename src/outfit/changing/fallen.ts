/** Something that goes with what is taken out, because it cannot be without it. */
export interface Fallen {
  readonly kind: 'piece' | 'work' | 'join' | 'try-on' | 'unit';
  readonly id: string;
  readonly name: string;
}
