// Out of the page: a file to keep, or one that is handed on to another program.

/** @returns {void} */
export function save_file(name, text, type = "application/json") {
  const url = URL.createObjectURL(new Blob([text], { type }));
  const link = Object.assign(document.createElement("a"), { href: url, download: name });
  link.click();
  setTimeout(() => URL.revokeObjectURL(url), 60_000);
}

/** Hands a file on where the device can; else it is saved. @returns {Promise<boolean>} whether it was handed on */
export async function share_file(name, text, type = "application/json") {
  const file = new File([text], name, { type });
  if (navigator.canShare?.({ files: [file] })) {
    try {
      await navigator.share({ files: [file], title: name });
      return true;
    } catch (fault) {
      if (fault.name === "AbortError") return true;
    }
  }
  save_file(name, text, type);
  return false;
}

/** Lets somebody choose files. @returns {Promise<{name: string, bytes: Uint8Array}[]>} */
export function choose_files(several) {
  return new Promise((done) => {
    const input = Object.assign(document.createElement("input"), {
      type: "file",
      multiple: several,
      accept: ".rig,.json,.rig-boat,text/plain",
    });
    input.id = "chooser";
    input.className = "vh";
    input.tabIndex = -1;
    input.setAttribute("aria-hidden", "true");
    const end = async () => {
      const files = await Promise.all(
        [...input.files].map(async (file) => ({ name: file.name, bytes: new Uint8Array(await file.arrayBuffer()) })),
      );
      input.remove();
      done(files);
    };
    input.addEventListener("change", end);
    input.addEventListener("cancel", end);
    document.body.append(input);
    input.click();
  });
}
