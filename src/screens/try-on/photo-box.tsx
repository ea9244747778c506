import { useSignal } from '@preact/signals';
import { Sign } from '../../ui/signs.tsx';
import { focusOn } from '../describe/focus-on.ts';
import { photoFault, smallPhoto } from './photo.ts';

/** A picture kept with the note: taken now, or chosen. It stays on this device. */
export function PhotoBox(props: {
  readonly photo: string;
  readonly what: string;
  readonly onPhoto: (photo: string) => void;
}) {
  const { photo, what, onPhoto } = props;
  const busy = useSignal(false);
  const unread = useSignal('');
  const take = async (file: File | undefined): Promise<void> => {
    if (!file) return;
    busy.value = true;
    const small = await smallPhoto(file);
    busy.value = false;
    unread.value =
      small === undefined ? 'This picture cannot be read here; a JPEG or PNG picture would do.' : '';
    if (small !== undefined) onPhoto(small);
  };
  const fault = unread.value || (photoFault(photo) ?? '');
  return (
    <section data-part="photo">
      <h2>Photo</h2>
      {photo !== '' && <img class="photo" src={photo} alt={`As it is: ${what}`} />}
      <p role="status" class={busy.value ? '' : 'unseen'}>
        {busy.value ? 'Making it small…' : photo === '' ? '' : 'A photo is with the note.'}
      </p>
      {fault !== '' && (
        <p class="fault" role="alert">
          <Sign name="caution" />
          <span>{fault}</span>
        </p>
      )}
      <div class="choice">
        <label class="plain take-photo">
          <span>{photo === '' ? 'Take a photo' : 'Take another'}</span>
          <input
            type="file"
            accept="image/*"
            capture="environment"
            onChange={(event) => {
              void take(event.currentTarget.files?.[0]);
              event.currentTarget.value = '';
            }}
          />
        </label>
        {photo !== '' && (
          <button
            type="button"
            class="plain"
            onClick={() => {
              onPhoto('');
              focusOn('[data-part="photo"] input');
            }}
          >
            Take the photo off
          </button>
        )}
      </div>
    </section>
  );
}
