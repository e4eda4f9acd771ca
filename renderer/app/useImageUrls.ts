import { useEffect, useMemo, useState } from 'react';
import type { Yard } from '../../core/yard.ts';
import type { OpenFile, Session } from './session.ts';

const NONE: ReadonlyMap<string, string> = new Map();

/** An address in this window for the bytes of each of the yard's pictures, fetched once for each open file. */
export function useImageUrls(
  session: Session,
  file: OpenFile | null,
  yard: Yard | null,
): ReadonlyMap<string, string> {
  const [urls, setUrls] = useState(NONE);
  const handle = file?.handle;
  const hashes = useMemo(
    () => [...new Set(yard?.pictures.map((picture) => picture.imageHash))].sort().join(' '),
    [yard?.pictures],
  );
  useEffect(() => {
    if (handle === undefined || hashes === '') {
      setUrls(NONE);
      return;
    }
    let gone = false;
    const made: string[] = [];
    void (async () => {
      const found = new Map<string, string>();
      // A picture just brought in is asked for once the edit that carries its bytes is on disk.
      await session.settled();
      if (gone) return;
      for (const imageHash of hashes.split(' ')) {
        const image = await session.ask('Fetching the picture', () =>
          session.host.readImage({ yard: handle, imageHash }),
        );
        if (image === null || gone) continue;
        const url = URL.createObjectURL(new Blob([new Uint8Array(image.bytes)], { type: image.mediaType }));
        made.push(url);
        found.set(imageHash, url);
      }
      if (!gone) setUrls(found);
    })();
    return () => {
      gone = true;
      for (const url of made) URL.revokeObjectURL(url);
    };
  }, [session, handle, hashes]);
  return urls;
}
