;;; rig-mode.el --- Rig files of Sheerpole  -*- lexical-binding: t -*-

;; Put this file where Emacs looks for Lisp and write into your init file:
;;   (require 'rig-mode)
;;   (add-hook 'rig-mode-hook #'eglot-ensure)

;;; Code:

(defconst rig-mode-sources
  '("measured" "drawn" "maker" "standard" "practice" "assumed" "computed")
  "Words that say where a value is from.")

(defconst rig-mode-keywords
  '("from" "of" "on" "x" "mirrored" "free" "clamped" "ends")
  "Words with a meaning inside a statement.")

(defvar rig-mode-font-lock
  `(("^[ \t]*\\(language\\|use\\|let\\|expect\\)\\_>" 1 font-lock-keyword-face)
    ("^[ \t]*\\([a-z][a-z0-9-]*\\)\\(?:[ \t]+[A-Za-z0-9.-]+\\)*\\(?:[ \t]+\"[^\"\n]*\"\\)?\\(?:[ \t]+[A-Za-z0-9.-]+\\)*[ \t]*{"
     1 font-lock-type-face)
    ("\\_<\\([A-Za-z][A-Za-z0-9-]*\\)[ \t]*:" 1 font-lock-variable-name-face)
    (,(regexp-opt rig-mode-sources 'symbols) . font-lock-builtin-face)
    (,(regexp-opt rig-mode-keywords 'symbols) . font-lock-keyword-face)
    ("\\_<\\(?:port\\|starboard\\)\\_>" . font-lock-constant-face))
  "What is coloured without a language server.")

(defvar rig-mode-syntax-table
  (let ((table (make-syntax-table)))
    (modify-syntax-entry ?# "<" table)
    (modify-syntax-entry ?\n ">" table)
    (modify-syntax-entry ?- "_" table)
    (modify-syntax-entry ?' "." table)
    table)
  "A hyphen belongs to a name; # begins a comment.")

(defun rig-mode-indent-line ()
  "Indent by two columns for each block and bracket that is open."
  (interactive)
  (let* ((depth (save-excursion
                  (back-to-indentation)
                  (- (car (syntax-ppss (line-beginning-position)))
                     (if (looking-at "[])}]") 1 0))))
         (behind (- (current-column) (current-indentation))))
    (indent-line-to (* 2 (max 0 depth)))
    (when (> behind 0)
      (forward-char behind))))

;;;###autoload
(define-derived-mode rig-mode prog-mode "Rig"
  "For rig files, which say how a boat's standing rigging is made."
  (setq-local comment-start "# "
              comment-start-skip "#+[ \t]*"
              indent-tabs-mode nil
              indent-line-function #'rig-mode-indent-line
              font-lock-defaults '(rig-mode-font-lock)))

;;;###autoload
(add-to-list 'auto-mode-alist '("\\.rig\\'" . rig-mode))

(defvar eglot-server-programs)
(with-eval-after-load 'eglot
  (add-to-list 'eglot-server-programs '(rig-mode . ("sheerpole" "editor"))))

(provide 'rig-mode)
;;; rig-mode.el ends here
