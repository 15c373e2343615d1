import { readClipIndex, type ClipIndex } from '../../core/speech/clip-index.ts';

/** The clips as they lie on the server, or with the page once it is kept for offline. */
export interface Clips {
  index(): Promise<ClipIndex>;
  /** One clip by its id, as an encoded file of its own. */
  clip(id: string): Promise<ArrayBuffer>;
}

const DIR = '/voice/';

const filesIn = (index: ClipIndex): readonly string[] => [
  ...new Set([...index.values()].map(({ file }) => file)),
];

/**
 * Files are fetched when a clip of theirs is first wanted, and kept; once one is there the others follow,
 * so that a call's words do not wait for a server that sleeps by then. All of it rejects, in words, where a
 * file is missing or is not what the index says; what failed is fetched anew the next time.
 */
export function openClips(fetchFile: typeof fetch = (path) => fetch(path)): Clips {
  const files = new Map<string, Promise<ArrayBuffer>>();
  let followed: Promise<unknown> | null = null;
  let opening: Promise<ClipIndex> | null = null;

  const fetched = async (name: string): Promise<Response> => {
    const response = await fetchFile(DIR + name);
    if (!response.ok) throw new Error(`No ${name} of the voice: ${response.status}.`);
    return response;
  };
  const readIndex = async (): Promise<ClipIndex> => {
    const found = readClipIndex(await (await fetched('index.json')).json());
    if (found === null) throw new Error('The list of spoken clips cannot be read.');
    return found;
  };
  const fileOf = (name: string): Promise<ArrayBuffer> => {
    const known = files.get(name);
    if (known) return known;
    const coming = fetched(name).then((response) => response.arrayBuffer());
    files.set(name, coming);
    coming.catch(() => files.delete(name));
    return coming;
  };
  const openIndex = (): Promise<ClipIndex> => {
    if (opening === null) {
      opening = readIndex();
      opening.catch(() => (opening = null));
    }
    return opening;
  };

  return {
    index: openIndex,
    async clip(id) {
      const index = await openIndex();
      const entry = index.get(id);
      if (!entry) throw new Error(`No clip says "${id}".`);
      const { file, start, bytes } = entry;
      const whole = await fileOf(file);
      followed ??= Promise.allSettled(filesIn(index).map(fileOf));
      if (start + bytes > whole.byteLength) throw new Error(`${file} of the voice is cut short.`);
      return whole.slice(start, start + bytes);
    },
  };
}
