const square = (...names: readonly string[]) => ({
  unit: 'mm',
  start: [0, 0],
  edges: [
    [100, 0],
    [100, 200],
    [0, 200],
    [0, 0],
  ].map((to, i) => ({ name: names[i], to })),
});

/** The file of an outfit of three pieces, small enough to see at once what a change to it does. A fresh one each time. */
export const small = () => ({
  format: 'slipbaste-outfit',
  version: 1,
  id: 'small',
  name: 'small outfit',
  event: { name: 'a day', date: '2027-05-29' },
  cloths: [
    { id: 'lawn', name: 'lawn', width: '1 m', fibre: 'cotton', iron: 200, thread: 'white', needle: '70/10' },
  ],
  markers: [{ id: 'chalk', name: 'chalk', kind: 'chalk' }],
  garments: [
    {
      id: 'shirt',
      name: 'shirt',
      pieces: [
        {
          id: 'front',
          name: 'front',
          cloth: 'lawn',
          cut: 'pair',
          allowance: '15 mm',
          outline: square('shoulder', 'side', 'hem', 'opening'),
        },
        {
          id: 'back',
          name: 'back',
          cloth: 'lawn',
          cut: 'fold',
          allowance: '15 mm',
          outline: square('shoulder', 'side', 'hem', 'fold'),
        },
        {
          id: 'pocket',
          name: 'pocket',
          cloth: 'lawn',
          cut: 'one',
          allowance: '10 mm',
          outline: square('top', 'right', 'bottom', 'left'),
        },
      ],
      works: [
        {
          kind: 'gather',
          id: 'front-gathers',
          name: 'front gathers',
          on: 'front',
          edge: 'shoulder',
          marker: 'chalk',
        },
        {
          kind: 'hem',
          id: 'hem',
          name: 'hem',
          on: 'back',
          along: ['front.hem', 'back.hem', 'other:back.hem', 'other:front.hem'],
          turn: '15 mm',
          by: 'machine',
        },
      ],
      joins: [
        {
          id: 'shoulder',
          name: 'shoulder seam',
          this: ['front.shoulder'],
          to: ['back.shoulder'],
          depth: '15 mm',
        },
        { id: 'side', name: 'side seam', this: ['front.side'], to: ['back.side'], depth: '15 mm' },
        {
          id: 'pocket-seam',
          name: 'pocket seam',
          this: ['front.opening'],
          to: ['pocket.top'],
          depth: '10 mm',
        },
      ],
      gates: [
        {
          id: 'try',
          name: 'first try-on',
          after: ['side'],
          checks: ['It hangs straight from the shoulders'],
        },
      ],
    },
  ],
});
