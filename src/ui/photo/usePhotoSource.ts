import { useEffect, useState } from 'react';

/** Address under which the page can show a file; changes with the file and is given back after use. */
export function usePhotoSource(file: Blob | null): string | null {
  const [source, setSource] = useState<string | null>(null);
  useEffect(() => {
    if (file === null) {
      setSource(null);
      return;
    }
    const address = URL.createObjectURL(file);
    setSource(address);
    return () => URL.revokeObjectURL(address);
  }, [file]);
  return source;
}
