;;; emacs.el --- Works a boat through Emacs and eglot  -*- lexical-binding: t -*-

;; emacs --batch --no-init-file -l emacs.el
;; In the environment: SHEERPOLE, the program; BOATS, a folder with a copy of boats/, in which all happens; EMACS_FILES, the
;; files for Emacs of docs/editors. Each step looks at the buffer or at what the editor shows.

;;; Code:

(require 'cl-lib)
(require 'package)
(package-initialize)
(require 'eglot)
(require 'flymake)
(add-to-list 'load-path (getenv "EMACS_FILES"))
(require 'rig-mode)

(defvar steps-passed 0)
(defvar steps-failed 0)

(defun step-check (name good &optional seen)
  (if good
      (progn (cl-incf steps-passed) (message "ok   %s" name))
    (cl-incf steps-failed)
    (message "FAIL %s: %S" name seen)))

(defmacro step-wait (&rest body)
  "Wait until BODY holds, for 20 s at most."
  `(with-timeout (20 nil)
     (let (held)
       (while (not (setq held (progn ,@body)))
         (accept-process-output nil 0.05))
       held)))

(defun step-codes ()
  (mapcar (lambda (each) (flymake-diagnostic-text each)) (flymake-diagnostics)))

(defun step-finds (slug)
  (cl-some (lambda (each) (string-match-p (regexp-quote slug) each)) (step-codes)))

(defun step-line ()
  (buffer-substring-no-properties (line-beginning-position) (line-end-position)))

(defun step-go (text &optional behind)
  (goto-char (point-min))
  (search-forward text)
  (goto-char (+ (match-beginning 0) (or behind 0))))

(defun step-tell-server ()
  "Send what has been typed, as eglot does when the user pauses."
  (eglot--signal-textDocument/didChange))

(setq eglot-sync-connect 20
      eglot-autoshutdown nil
      eglot-confirm-server-initiated-edits nil
      eglot-send-changes-idle-time 0
      create-lockfiles nil
      make-backup-files nil)

(defun step-all ()
  (let* ((folder (file-name-as-directory (getenv "BOATS")))
         (boat (find-file-noselect (concat folder "boat.rig")))
         parts server)
    ;; The boat and her library are of one project, as they are in a repository.
    (add-hook 'project-find-functions (lambda (_) (cons 'transient folder)))
    (set-buffer boat)
    (step-check "the file is known by its name" (eq major-mode 'rig-mode) major-mode)
    (font-lock-ensure)
    (step-go "stay shroud")
    (step-check "its words are coloured" (eq (get-text-property (point) 'face) 'font-lock-type-face)
                (get-text-property (point) 'face))
    (eglot '(rig-mode) (cons 'transient folder) 'eglot-lsp-server
           (list (getenv "SHEERPOLE") "editor") "rig")
    (setq server (eglot-current-server))
    (step-check "the server is there" server)
    ;; With nobody at the keyboard no command ends, which is when Flymake begins.
    (flymake-start)
    (step-check "a slip is shown" (step-wait (step-finds "unknown-name"))
                (step-codes))
    (let ((shown (car (flymake-diagnostics))))
      (step-check "where it stands"
                  (equal (buffer-substring-no-properties (flymake-diagnostic-beg shown) (flymake-diagnostic-end shown))
                         "toggel-12")
                  shown))

    ;; A suggested edit.
    (step-go "toggel-12" 2)
    (let ((offered (eglot-code-actions (point) (point) "quickfix" nil)))
      (step-check "the edit is offered" (and offered (equal (plist-get (elt offered 0) :title) "write `toggle-12`")) offered)
      (eglot--apply-workspace-edit (plist-get (elt offered 0) :edit)))
    (step-go "    toggle-12")
    (step-check "the edit mends the text" (equal (step-line) "    toggle-12") (step-line))
    (step-tell-server)
    (step-check "the finding goes" (step-wait (not (step-finds "unknown-name"))) (step-codes))

    ;; Completion of a property, and of the name of a part that a library declares.
    (step-go "  line: line-9")
    (end-of-line)
    (insert "\n  dut")
    (completion-at-point)
    (step-check "a property is completed" (equal (step-line) "  duty: ") (step-line))
    (insert "standing")
    (step-go "    screw-12 (")
    (insert "    screw\n")
    (forward-line -1)
    (end-of-line)
    (completion-at-point)
    (step-check "a part is completed" (equal (step-line) "    screw-12") (step-line))
    (delete-region (line-beginning-position) (1+ (line-end-position)))

    ;; The library is a buffer of its own, with what is not saved yet.
    (setq parts (find-file-noselect (concat folder "parts/demo-parts.rig")))
    (step-check "the library belongs to the same server"
                (with-current-buffer parts (eq (eglot-current-server) server)))

    ;; What a word means.
    (step-go "path: tang" 1)
    (step-tell-server)
    (let ((hover (jsonrpc-request server :textDocument/hover (eglot--TextDocumentPositionParams))))
      (step-check "a property is explained" (string-match-p "points it goes through" (format "%S" hover)) hover))

    ;; Into a library.
    (step-go "screw-12" 3)
    (let ((found (xref-backend-definitions 'eglot (xref-backend-identifier-at-point 'eglot))))
      (step-check "a name leads into the library"
                  (and found (string-match-p "demo-parts" (format "%S" (xref-item-location (car found))))) found)
      (let ((marker (xref-location-marker (xref-item-location (car found)))))
        (with-current-buffer (marker-buffer marker)
          (goto-char marker)
          (step-check "to where it stands" (string-prefix-p "turnbuckle screw-12" (step-line)) (step-line)))))

    ;; Another name in both files.
    (set-buffer boat)
    (step-go "screw-12" 3)
    (eglot-rename "screw-thirteen")
    (step-check "a name is changed in the boat"
                (save-excursion (goto-char (point-min)) (search-forward "screw-thirteen (length: 350 mm)" nil t)))
    (step-check "and in the library"
                (with-current-buffer parts (goto-char (point-min)) (search-forward "turnbuckle screw-thirteen" nil t)))
    (step-check "a name that is taken is refused"
                (condition-case refused (progn (step-go "screw-thirteen" 3) (eglot-rename "toggle-12") nil)
                  (error (string-match-p "declared already" (format "%S" refused)))))

    ;; Laid out, behind signs of several bytes and units.
    (step-go "  sides: port, starboard")
    (delete-region (line-beginning-position) (line-end-position))
    (insert " sides:port,starboard   # beide – ⛵🚢")
    (step-tell-server)
    (eglot-format-buffer)
    (step-go "port, starboard")
    (step-check "the text is laid out" (equal (step-line) "  sides: port, starboard  # beide – ⛵🚢") (step-line))
    (step-tell-server)
    (with-current-buffer parts (step-tell-server))
    (step-check "no error is left" (step-wait (and (not (step-finds "unknown-name")) (step-finds "stay-angle-small")))
                (step-codes))

    (let ((inhibit-message t))
      (eglot-shutdown server nil 20))
    (step-check "the server leaves when it is told to" (not (jsonrpc-running-p server)))))

(condition-case fault
    (progn (step-all) (step-check "all steps were taken" t))
  (error (step-check "all steps were taken" nil fault)))
(message "%d passed, %d failed" steps-passed steps-failed)
(dolist (buffer (buffer-list))
  (with-current-buffer buffer (set-buffer-modified-p nil)))
(kill-emacs (if (= steps-failed 0) 0 1))
;;; emacs.el ends here
